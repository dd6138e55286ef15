package bagward.clockwork;

import java.time.Duration;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;

/**
 * Runs a task again and again on a thread of its own, never twice at a time: when it is asked for, and by itself after the
 * pause that each run names. Being asked during a run makes one more run.
 */
public final class Clockwork implements AutoCloseable {
    private static final Duration USUAL_CLOSING = Duration.ofSeconds(10);

    private final Supplier<Pause> task;
    private final Pause first;
    private final Duration closing;
    private final Thread thread;
    private final ReentrantLock lock = new ReentrantLock();
    private final Condition news = lock.newCondition();
    private boolean asked;
    private boolean closed;

    /**
     * Nothing runs before {@link #start}.
     *
     * @param name of the thread
     * @param first pause before the first run
     * @param task names the pause after it; must not throw
     * @param closing how long {@link #close} waits for a run to end
     */
    public Clockwork(String name, Pause first, Supplier<Pause> task, Duration closing) {
        this.task = task;
        this.first = first;
        this.closing = closing;
        this.thread = new Thread(this::run, name);
        thread.setDaemon(true);
    }

    /**
     * One that rests after each run for as long as the run took at least; its pauses count from the start of a run.
     *
     * @param pause also that before the first run
     * @param task must not throw
     */
    public static Clockwork resting(String name, Pause pause, Runnable task) {
        Supplier<Pause> measured = () -> {
            long start = System.nanoTime();
            task.run();
            return pause.after(Duration.ofNanos(System.nanoTime() - start));
        };
        return new Clockwork(name, pause, measured, USUAL_CLOSING);
    }

    /** Starts. */
    public void start() {
        thread.start();
    }

    /** Asks for a run; returns at once. */
    public void ask() {
        lock.lock();
        try {
            asked = true;
            news.signalAll();
        } finally {
            lock.unlock();
        }
    }

    private void run() {
        Pause pause = first;
        try {
            while (awaitTurn(pause)) {
                pause = task.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private boolean awaitTurn(Pause pause) throws InterruptedException {
        long begun = System.nanoTime();
        long soonest = pause.shortest().toNanos();
        long latest = Math.max(soonest, pause.longest().toNanos());
        lock.lock();
        try {
            while (!closed) {
                long wait = begun + (asked ? soonest : latest) - System.nanoTime();
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
            thread.join(closing.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
