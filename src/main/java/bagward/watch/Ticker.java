package bagward.watch;

import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Runs a task on a thread of its own: soon after it was asked for, never sooner than the shortest pause after the last
 * start nor before as much time has passed idle as the last run took, and after the longest pause without being asked.
 */
final class Ticker implements AutoCloseable {
    private final Runnable task;
    private final long shortest;
    private final long longest;
    private final Thread thread;
    private final ReentrantLock lock = new ReentrantLock();
    private final Condition news = lock.newCondition();
    private boolean asked;
    private boolean closed;

    /** @param task must not throw */
    Ticker(Runnable task, Duration shortest, Duration longest) {
        this.task = task;
        this.shortest = shortest.toNanos();
        this.longest = longest.toNanos();
        this.thread = new Thread(this::run, "board-ticker");
        thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    /** Asks for a run. */
    void ask() {
        lock.lock();
        try {
            asked = true;
            news.signalAll();
        } finally {
            lock.unlock();
        }
    }

    private void run() {
        long start = System.nanoTime();
        long took = 0;
        try {
            while (awaitTurn(start, Math.max(shortest, 2 * took))) {
                start = System.nanoTime();
                task.run();
                took = System.nanoTime() - start;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private boolean awaitTurn(long lastStart, long soonest) throws InterruptedException {
        lock.lock();
        try {
            while (!closed) {
                long wait = lastStart + (asked ? soonest : Math.max(soonest, longest)) - System.nanoTime();
                if (wait <= 0) {
                    asked = false;
                    return true;
                }
                news.awaitNanos(wait);
            }
            return false;
        } finally {
            lock.unlock();
        }
    }

    /** Stops after the run that is under way. */
    @Override
    public void close() {
        lock.lock();
        try {
            closed = true;
            news.signalAll();
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
