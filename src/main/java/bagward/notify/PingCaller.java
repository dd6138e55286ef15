package bagward.notify;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Calls an address at regular times while all is well. Whoever is called notices when the calls stop, whatever the reason:
 * program, machine, current or network.
 */
final class PingCaller implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(PingCaller.class);
    private static final Duration PATIENCE = Duration.ofSeconds(10);
    private static final int FIRST_FAILURE = 400;

    private final DeliverySettings.Ping settings;
    private final BooleanSupplier well;
    private final HttpClient client = HttpClient.newBuilder()
            .connectTimeout(PATIENCE)
            .followRedirects(HttpClient.Redirect.NEVER)
            .build();
    private final CountDownLatch stop = new CountDownLatch(1);
    private final Thread thread = new Thread(this::run, "ping");
    private volatile Optional<String> trouble = Optional.empty();

    /** @param well whether all is well; while it is not, nothing is called */
    PingCaller(DeliverySettings.Ping settings, BooleanSupplier well) {
        this.settings = settings;
        this.well = well;
        thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    /** Why the last call failed; empty if it did not. */
    Optional<String> trouble() {
        return trouble;
    }

    private void run() {
        try {
            do {
                if (well.getAsBoolean()) {
                    call();
                }
            } while (!stop.await(settings.every().toMillis(), TimeUnit.MILLISECONDS));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void call() throws InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(settings.url()).timeout(PATIENCE).GET().build();
        try {
            int status = client.send(request, BodyHandlers.discarding()).statusCode();
            note(status < FIRST_FAILURE ? Optional.empty() : Optional.of("it answers " + status));
        } catch (IOException e) {
            note(Optional.of("it cannot be reached: " + e.getClass().getSimpleName()));
        }
    }

    private void note(Optional<String> now) {
        if (now.isPresent() && trouble.isEmpty()) {
            LOG.warn("the ping to {} failed: {}", settings.url().getHost(), now.get());
        }
        trouble = now;
    }

    @Override
    public void close() {
        stop.countDown();
        try {
            thread.join(2 * PATIENCE.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
