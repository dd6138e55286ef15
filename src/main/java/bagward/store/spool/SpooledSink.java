package bagward.store.spool;

import bagward.store.StoreException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Passes batches to a store directly, and through a spool while the store is away or earlier batches still wait: what was
 * put first is stored first. Safe for use by several threads.
 */
final class SpooledSink<T> implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(SpooledSink.class);

    private static final int MOST_AT_ONCE = 5000;
    private static final Duration CLOSING = Duration.ofSeconds(15);

    private final Spool<T> spool;
    private final Consumer<List<T>> store;
    private final Clock clock;
    private final Duration pause;
    private final Object order = new Object();
    private final Semaphore news = new Semaphore(0);
    private final CountDownLatch stop = new CountDownLatch(1);
    private final Thread thread;
    private volatile Optional<Outage> outage = Optional.empty();

    /**
     * Opens a sink and begins to pass on what waits from an earlier run.
     *
     * @param spool where batches wait
     * @param store takes them, in the background; must take the same batch twice as once
     * @param clock tells since when the store is away
     * @param pause how long to wait after the store refused a batch
     */
    SpooledSink(Spool<T> spool, Consumer<List<T>> store, Clock clock, Duration pause) {
        this.spool = spool;
        this.store = store;
        this.clock = clock;
        this.pause = pause;
        this.thread = new Thread(this::run, "drain spool");
        thread.setDaemon(true);
        thread.start();
    }

    /**
     * Puts a batch: it is in the store or in the spool, and on disk, when this returns.
     *
     * @param direct stores the batch; throws a {@link StoreException} if the store is away
     * @return what {@code direct} gave; empty if the batch waits in the spool
     * @throws StoreException if the store is away and the spool does not take it; it is in neither then
     */
    <R> Optional<R> put(List<T> batch, Supplier<R> direct) {
        synchronized (order) {
            if (spool.isEmpty()) {
                try {
                    R result = direct.get();
                    outage = Optional.empty();
                    return Optional.of(result);
                } catch (StoreException e) {
                    away(e);
                }
            }
            spool.put(batch, clock.instant());
        }
        news.release();
        return Optional.empty();
    }

    private void away(RuntimeException e) {
        Optional<Outage> before = outage;
        if (before.isEmpty()) {
            LOG.warn("The store is away; what comes waits in the spool: {}", e.getMessage());
        }
        Instant since = before.map(Outage::since).orElseGet(clock::instant);
        outage = Optional.of(new Outage(since, String.valueOf(e.getMessage())));
    }

    private void run() {
        try {
            while (stop.getCount() > 0) {
                if (spool.isEmpty()) {
                    news.tryAcquire(1, TimeUnit.SECONDS);
                    news.drainPermits();
                } else if (!passOn()) {
                    stop.await(pause.toMillis(), TimeUnit.MILLISECONDS);
                }
            }
        } catch (InterruptedException e) {
            LOG.debug("Asked to stop");
        }
    }

    /** Passes on the oldest segment. */
    private boolean passOn() {
        try {
            Optional<Spool.Taken<T>> taken = spool.oldest();
            if (taken.isPresent()) {
                List<T> items = taken.get().items();
                for (int from = 0; from < items.size(); from += MOST_AT_ONCE) {
                    store.accept(items.subList(from, Math.min(items.size(), from + MOST_AT_ONCE)));
                }
                synchronized (order) {
                    spool.drop(taken.get());
                    outage = Optional.empty();
                }
            }
            return true;
        } catch (RuntimeException e) {
            away(e);
            return false;
        }
    }

    /** What waits. */
    List<T> waiting() {
        return spool.isEmpty() ? List.of() : spool.waiting();
    }

    /** Since when the store is away, and why; empty if the last batch was stored. */
    Optional<Outage> outage() {
        return outage;
    }

    /** How much waits. */
    Depth depth() {
        return spool.depth();
    }

    /**
     * A time during which the store takes nothing.
     *
     * @param since when it was first noticed
     * @param why what the store said last
     */
    record Outage(Instant since, String why) {}

    /** Stops after the batch at hand; what waits stays on disk. */
    @Override
    public void close() {
        stop.countDown();
        news.release();
        try {
            thread.join(CLOSING.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        spool.close();
    }
}
