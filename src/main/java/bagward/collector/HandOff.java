package bagward.collector;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;

/** What stands between the network thread, which must not wait, and the commits, which may. Bounded. */
final class HandOff {
    private static final int MOST_MESSAGES = 4096;
    private static final long MOST_BYTES = 64L << 20;

    private final BlockingQueue<Arrival> queue = new ArrayBlockingQueue<>(MOST_MESSAGES);
    private final AtomicLong bytes = new AtomicLong();

    /**
     * Takes a message over.
     *
     * @param patience how long to wait for room
     * @return whether there was room
     */
    boolean offer(Arrival arrival, Duration patience) throws InterruptedException {
        int length = arrival.message().bytes().length;
        if (bytes.get() + length > MOST_BYTES) {
            return false;
        }
        // counted before it is in, so that a quick taker cannot make the sum negative
        bytes.addAndGet(length);
        boolean taken = queue.offer(arrival, patience.toNanos(), TimeUnit.NANOSECONDS);
        if (!taken) {
            bytes.addAndGet(-length);
        }
        return taken;
    }

    /**
     * The next batch.
     *
     * @param most its size at most; when so many are there it does not linger
     * @param linger how long to wait for more after the first
     * @param idle how long to wait for the first; then the batch is empty
     */
    List<Arrival> take(int most, Duration linger, Duration idle) throws InterruptedException {
        List<Arrival> batch = new ArrayList<>();
        Arrival first = queue.poll(idle.toNanos(), TimeUnit.NANOSECONDS);
        if (first == null) {
            return batch;
        }
        batch.add(first);
        long end = System.nanoTime() + linger.toNanos();
        while (batch.size() < most) {
            if (queue.drainTo(batch, most - batch.size()) > 0) {
                continue;
            }
            Arrival next = queue.poll(end - System.nanoTime(), TimeUnit.NANOSECONDS);
            if (next == null) {
                break;
            }
            batch.add(next);
        }
        batch.forEach(a -> bytes.addAndGet(-a.message().bytes().length));
        return batch;
    }

    int waiting() {
        return queue.size();
    }
}
