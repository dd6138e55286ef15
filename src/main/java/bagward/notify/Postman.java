package bagward.notify;

import bagward.store.StoreException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** A thread that goes the rounds of one channel: when it is rung for, and when something is due. */
final class Postman implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Postman.class);
    private static final Duration LONGEST_SLEEP = Duration.ofSeconds(10);
    /** A little more than a channel may take, so that what is being handed over is noted before the store closes. */
    private static final Duration CLOSING = Duration.ofSeconds(25);

    private final Round round;
    private final Clock clock;
    private final Thread thread;
    private final ReentrantLock lock = new ReentrantLock();
    private final Condition bell = lock.newCondition();
    private boolean rung;
    private boolean closed;

    Postman(String name, Round round, Clock clock) {
        this.round = round;
        this.clock = clock;
        this.thread = new Thread(this::run, "deliver " + name);
        thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    /** Says that something may wait. */
    void ring() {
        lock.lock();
        try {
            rung = true;
            bell.signalAll();
        } finally {
            lock.unlock();
        }
    }

    private void run() {
        try {
            do {
                await(pass());
            } while (!closed());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
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

    private void await(Optional<Instant> due) throws InterruptedException {
        Duration until = due.map(at -> Duration.between(clock.instant(), at)).orElse(LONGEST_SLEEP);
        long nanos = (until.compareTo(LONGEST_SLEEP) > 0 ? LONGEST_SLEEP : until).toNanos();
        lock.lock();
        try {
            while (!closed && !rung && nanos > 0) {
                nanos = bell.awaitNanos(nanos);
            }
            rung = false;
        } finally {
            lock.unlock();
        }
    }

    private boolean closed() {
        lock.lock();
        try {
            return closed;
        } finally {
            lock.unlock();
        }
    }

    @Override
    public void close() {
        lock.lock();
        try {
            closed = true;
            bell.signalAll();
        } finally {
            lock.unlock();
        }
        try {
            thread.join(CLOSING.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
