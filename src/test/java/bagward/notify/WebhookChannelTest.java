package bagward.notify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.clockwork.HandClock;
import bagward.store.TestAuthority;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import com.sun.net.httpserver.HttpsConfigurator;
import com.sun.net.httpserver.HttpsServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Webhooks to real servers. */
class WebhookChannelTest {
    private static final WebhookSecret SECRET = WebhookSecret.parse("whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw");

    private final HandClock clock = new HandClock(Letters.NOON.plusSeconds(3));
    private final List<Request> requests = new CopyOnWriteArrayList<>();
    private final CountDownLatch end = new CountDownLatch(1);
    private final HttpServer server;
    private volatile int status = 204;

    private record Request(String id, String timestamp, String signature, String body) {}

    WebhookChannelTest() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        serve(server);
    }

    private void serve(HttpServer started) {
        started.setExecutor(Executors.newCachedThreadPool());
        started.createContext("/hook", this::answer);
        started.start();
    }

    @AfterEach
    void close() {
        end.countDown();
        server.stop(0);
    }

    private void answer(HttpExchange exchange) throws IOException {
        byte[] body = exchange.getRequestBody().readAllBytes();
        if (status == 0) {
            awaitEnd();
        }
        if (status / 100 == 3) {
            exchange.getResponseHeaders().set("Location", "/elsewhere");
        }
        requests.add(new Request(
                exchange.getRequestHeaders().getFirst("webhook-id"),
                exchange.getRequestHeaders().getFirst("webhook-timestamp"),
                exchange.getRequestHeaders().getFirst("webhook-signature"),
                new String(body, StandardCharsets.UTF_8)));
        exchange.sendResponseHeaders(status == 0 ? 204 : status, -1);
        exchange.close();
    }

    private void awaitEnd() {
        try {
            end.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private WebhookChannel channel(String scheme, int port, Optional<Path> caFile) {
        URI url = URI.create(scheme + "://127.0.0.1:" + port + "/hook?token=hidden");
        return new WebhookChannel(
                Letters.CHANNEL, new WebhookSettings(url, SECRET, caFile, Duration.ofMillis(700)), clock);
    }

    private WebhookChannel channel() {
        return channel("http", server.getAddress().getPort(), Optional.empty());
    }

    @Test
    void a_message_is_posted_as_json_with_a_signature_over_id_time_and_body() throws IOException {
        channel().hand(Letters.outgoing(Letters.about("T1", "raised T1 Öst")));
        Request request = requests.get(0);
        assertEquals("raised+T1+%C3%96st", request.id);
        assertEquals(Long.toString(clock.instant().getEpochSecond()), request.timestamp);
        assertEquals(
                SECRET.sign(request.id, clock.instant(), request.body.getBytes(StandardCharsets.UTF_8)),
                request.signature);
        JsonNode json = new ObjectMapper().readTree(request.body);
        assertEquals("message", json.get("type").asText());
        assertEquals("high", json.get("priority").asText());
        assertEquals("bag:T1", json.get("alarms").get(0).get("subject").asText());
        assertEquals("raised", json.get("alarms").get(0).get("news").asText());
        assertEquals(Letters.NOON, Instant.parse(json.get("at").asText()));
    }

    @Test
    void only_an_answer_of_200_to_299_in_time_is_taken_over() {
        WebhookChannel channel = channel();
        Outgoing letter = Letters.outgoing(Letters.about("T1", "m1"));
        for (int refusing : new int[] {301, 400, 401, 404, 410}) {
            status = refusing;
            assertTrue(
                    assertThrows(DeliveryException.class, () -> channel.hand(letter))
                            .refused(),
                    "" + refusing);
        }
        for (int notNow : new int[] {408, 429, 500, 503, 0}) {
            status = notNow;
            DeliveryException failure = assertThrows(DeliveryException.class, () -> channel.hand(letter));
            assertFalse(failure.refused(), "" + notNow);
            assertFalse(
                    failure.getMessage().contains("hidden"), "no secret in what people see: " + failure.getMessage());
        }
        status = 200;
        channel.hand(letter);
    }

    @Test
    void over_tls_only_a_server_whose_authority_is_trusted_gets_anything(@TempDir Path folder) throws Exception {
        TestAuthority authority = TestAuthority.make(folder);
        HttpsServer secure = HttpsServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        secure.setHttpsConfigurator(new HttpsConfigurator(authority.server()));
        serve(secure);
        try {
            int port = secure.getAddress().getPort();
            Outgoing letter = Letters.outgoing(Letters.about("T1", "m1"));
            assertThrows(
                    DeliveryException.class,
                    () -> channel("https", port, Optional.empty()).hand(letter));
            assertEquals(0, requests.size());
            channel("https", port, Optional.of(authority.authorityFile())).hand(letter);
            assertEquals(1, requests.size());
        } finally {
            secure.stop(0);
        }
    }
}
