package bagward.notify;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The ping against a real server that fails, hangs, goes away and comes back. */
class PingCallerTest {
    private static final int HANGS = 0;

    private final ExecutorService threads = Executors.newCachedThreadPool();
    private final AtomicInteger calls = new AtomicInteger();
    private volatile int answer = 204;
    private volatile boolean well = true;
    private HttpServer server;
    private final int port;
    private final PingCaller ping;

    PingCallerTest() throws IOException {
        server = server(0);
        port = server.getAddress().getPort();
        URI address = URI.create("http://127.0.0.1:" + port + "/ping");
        ping = new PingCaller(
                new DeliverySettings.Ping(address, Duration.ofMillis(20)), () -> well, Duration.ofMillis(400));
        ping.start();
    }

    @AfterEach
    void close() {
        ping.close();
        server.stop(0);
        threads.shutdownNow();
    }

    private HttpServer server(int onPort) throws IOException {
        HttpServer made = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), onPort), 0);
        made.setExecutor(threads);
        made.createContext("/ping", this::take);
        made.start();
        return made;
    }

    private void take(HttpExchange call) throws IOException {
        calls.incrementAndGet();
        if (answer != HANGS) {
            call.sendResponseHeaders(answer, -1);
            call.close();
        }
    }

    @Test
    void it_is_called_again_and_again() {
        await().until(() -> calls.get() >= 3);
        assertEquals(Optional.empty(), ping.trouble());
    }

    @Test
    void a_server_that_fails_is_told_and_forgotten_once_it_answers_again() {
        answer = 500;
        await().until(() -> ping.trouble().equals(Optional.of("it answers 500")));
        answer = 200;
        await().until(() -> ping.trouble().isEmpty());
    }

    @Test
    void a_redirection_is_not_followed_and_is_no_trouble() {
        answer = 302;
        int before = calls.get();
        await().until(() -> calls.get() >= before + 3);
        assertEquals(Optional.empty(), ping.trouble());
    }

    @Test
    void a_server_that_hangs_is_told_and_called_again() {
        answer = HANGS;
        await().until(() -> ping.trouble().equals(Optional.of("it cannot be reached: HttpTimeoutException")));
        answer = 204;
        await().until(() -> ping.trouble().isEmpty());
    }

    @Test
    void a_server_that_is_away_is_told_and_called_once_it_is_back() throws IOException {
        await().until(() -> calls.get() >= 1);
        server.stop(0);
        await().until(() -> ping.trouble().isPresent());
        int before = calls.get();
        server = server(port);
        await().until(() -> calls.get() > before && ping.trouble().isEmpty());
    }

    @Test
    void nothing_is_called_while_a_part_is_unwell() {
        await().until(() -> calls.get() >= 1);
        well = false;
        await().during(Duration.ofMillis(300)).atMost(Duration.ofSeconds(10)).until(new Unchanged()::seen);
        int silent = calls.get();
        well = true;
        await().until(() -> calls.get() > silent);
    }

    /** Whether the count is the same as when it was last asked. */
    private final class Unchanged {
        private int last = -1;

        boolean seen() {
            int before = last;
            last = calls.get();
            return before == last;
        }
    }
}
