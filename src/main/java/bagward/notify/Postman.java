package bagward.notify;

import bagward.clockwork.Clockwork;
import bagward.clockwork.Pause;
import bagward.store.StoreException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Goes the rounds of one channel on a thread of its own: when it is rung for, and when something is due. */
final class Postman implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Postman.class);
    private static final Duration LONGEST_SLEEP = Duration.ofSeconds(10);
    /** A little more than a channel may take, so that what is being handed over is noted before the store closes. */
    private static final Duration CLOSING = Duration.ofSeconds(25);

    private final Round round;
    private final Clock clock;
    private final Clockwork clockwork;

    Postman(String name, Round round, Clock clock) {
        this.round = round;
        this.clock = clock;
        this.clockwork = new Clockwork("deliver " + name, Pause.atMost(Duration.ZERO), this::go, CLOSING);
    }

    void start() {
        clockwork.start();
    }

    /** Says that something may wait. */
    void ring() {
        clockwork.ask();
    }

    private Pause go() {
        Duration until = pass().map(due -> Duration.between(clock.instant(), due))
                .filter(wait -> wait.compareTo(LONGEST_SLEEP) < 0)
                .orElse(LONGEST_SLEEP);
        return Pause.atMost(until);
    }

    private Optional<Instant> pass() {
        try {
            return round.pass();
        } catch (StoreException e) {
            LOG.warn("the outbox cannot be read or written; it is tried again", e);
        } catch (RuntimeException e) {
            LOG.error("a delivery failed by a defect; it is tried again", e);
        }
        return Optional.empty();
    }

    @Override
    public void close() {
        clockwork.close();
    }
}
