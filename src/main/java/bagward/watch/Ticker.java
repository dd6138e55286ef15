package bagward.watch;

import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Runs a tick on a thread of its own: soon after it was asked for, else at a slow beat. Never sooner than twice the time
 * that the last tick took, so that a small computer keeps half of itself for the rest.
 */
final class Ticker implements AutoCloseable {
    private static final Duration SHORTEST_PAUSE = Duration.ofMillis(300);

    private final Runnable tick;
    private final Duration slowBeat;
    private final ReentrantLock lock = new ReentrantLock();
    private final Condition asked = lock.newCondition();
    private final Thread thread;
    private boolean wanted = true;
    private boolean closed;

    /**
     * A ticker that stands still until it is started.
     *
     * @param tick what to do; must not throw
     * @param slowBeat longest time between two ticks
     */
    Ticker(Runnable tick, Duration slowBeat) {
        this.tick = tick;
        this.slowBeat = slowBeat;
        this.thread = new Thread(this::run, "watch");
        this.thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    /** Asks for a tick soon. */
    void ask() {
        lock.lock();
        try {
            wanted = true;
            asked.signalAll();
        } finally {
            lock.unlock();
        }
    }

    private void run() {
        try {
            while (awaitTurn()) {
                long begun = System.nanoTime();
                tick.run();
                Duration took = Duration.ofNanos(System.nanoTime() - begun);
                Duration pause = took.multipliedBy(2);
                rest(pause.compareTo(SHORTEST_PAUSE) < 0 ? SHORTEST_PAUSE : pause);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private boolean awaitTurn() throws InterruptedException {
        lock.lock();
        try {
            long left = slowBeat.toNanos();
            while (!wanted && !closed && left > 0) {
                left = asked.awaitNanos(left);
            }
            wanted = false;
            return !closed;
        } finally {
            lock.unlock();
        }
    }

    private void rest(Duration pause) throws InterruptedException {
        lock.lock();
        try {
            long left = pause.toNanos();
            while (!closed && left > 0) {
                left = asked.awaitNanos(left);
            }
        } finally {
            lock.unlock();
        }
    }

    @Override
    public void close() {
        lock.lock();
        try {
            closed = true;
            asked.signalAll();
        } finally {
            lock.unlock();
        }
        try {
            thread.join(TimeUnit.SECONDS.toMillis(10));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
