package bagward.notify;

import bagward.clockwork.Clockwork;
import bagward.clockwork.Pause;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Calls an address at regular times while all is well. Whoever is called notices when the calls stop, whatever the reason:
 * program, machine, current or network.
 */
final class PingCaller implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(PingCaller.class);
    private static final Duration USUAL_PATIENCE = Duration.ofSeconds(10);
    private static final int FIRST_FAILURE = 400;

    private final DeliverySettings.Ping settings;
    private final BooleanSupplier well;
    private final Duration patience;
    private final HttpClient client;
    private final Clockwork clockwork;
    private volatile Optional<String> trouble = Optional.empty();

    /** @param well whether all is well; while it is not, nothing is called */
    PingCaller(DeliverySettings.Ping settings, BooleanSupplier well) {
        this(settings, well, USUAL_PATIENCE);
    }

    /** @param patience how long an answer is waited for */
    PingCaller(DeliverySettings.Ping settings, BooleanSupplier well, Duration patience) {
        this.settings = settings;
        this.well = well;
        this.patience = patience;
        this.client = HttpClient.newBuilder()
                .connectTimeout(patience)
                .followRedirects(HttpClient.Redirect.NEVER)
                .build();
        this.clockwork = new Clockwork("ping", Pause.atMost(Duration.ZERO), this::go, patience.multipliedBy(2));
    }

    void start() {
        clockwork.start();
    }

    /** Why the last call failed; empty if it did not. */
    Optional<String> trouble() {
        return trouble;
    }

    private Pause go() {
        if (well.getAsBoolean()) {
            call();
        }
        return Pause.atMost(settings.every());
    }

    private void call() {
        HttpRequest request =
                HttpRequest.newBuilder(settings.url()).timeout(patience).GET().build();
        try {
            int status = client.send(request, BodyHandlers.discarding()).statusCode();
            note(status < FIRST_FAILURE ? Optional.empty() : Optional.of("it answers " + status));
        } catch (IOException e) {
            note(Optional.of("it cannot be reached: " + e.getClass().getSimpleName()));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
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
        clockwork.close();
    }
}
