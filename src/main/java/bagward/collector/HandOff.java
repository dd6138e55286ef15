package bagward.collector;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;

/**
 * What stands between the network threads, which must not wait, and the commits, which may: a bounded queue for each
 * session. All are taken from in each turn, so a session that is busy keeps no other waiting.
 */
final class HandOff {
    private static final int MOST_MESSAGES = 4096;
    private static final long MOST_BYTES = 64L << 20;

    private final ReentrantLock lock = new ReentrantLock();
    private final Condition arrived = lock.newCondition();
    private final Map<String, Queue> queues = new LinkedHashMap<>();
    private final int batchMost;
    private final long mostBytes;
    private int waiting;

    /** What waits of one session. */
    private final class Queue {
        private final Deque<Arrival> arrivals = new ArrayDeque<>();
        private final Condition room = lock.newCondition();
        private long bytes;
        private long fullNanos = System.nanoTime();

        boolean hasRoom(int length) {
            return arrivals.size() < MOST_MESSAGES && bytes + length <= mostBytes;
        }

        List<Arrival> take() {
            List<Arrival> batch = new ArrayList<>(Math.min(batchMost, arrivals.size()));
            while (batch.size() < batchMost && !arrivals.isEmpty()) {
                Arrival arrival = arrivals.remove();
                bytes -= length(arrival);
                batch.add(arrival);
            }
            if (batch.size() == batchMost) {
                fullNanos = System.nanoTime();
            }
            room.signalAll();
            return batch;
        }
    }

    /**
     * @param clients the sessions, in the order in which their turns come
     * @param batchMost messages of a batch at most; when so many are there it does not linger
     */
    HandOff(Collection<String> clients, int batchMost) {
        this.batchMost = batchMost;
        clients.forEach(client -> queues.put(client, new Queue()));
        this.mostBytes = MOST_BYTES / Math.max(1, queues.size());
    }

    /**
     * Takes a message over.
     *
     * @param patience how long to wait for room
     * @return whether there was room
     */
    boolean offer(Arrival arrival, Duration patience) throws InterruptedException {
        int length = length(arrival);
        long nanos = patience.toNanos();
        lock.lock();
        try {
            Queue queue = queue(arrival.from().clientId());
            while (!queue.hasRoom(length)) {
                if (nanos <= 0 || length > mostBytes) {
                    return false;
                }
                nanos = queue.room.awaitNanos(nanos);
            }
            queue.arrivals.add(arrival);
            queue.bytes += length;
            waiting++;
            // whoever lingers need not be woken for each message, only for the one that fills a batch
            if (waiting == 1 || queue.arrivals.size() >= batchMost) {
                arrived.signal();
            }
            return true;
        } finally {
            lock.unlock();
        }
    }

    /**
     * The next batches, one of each session of which anything waits.
     *
     * @param linger how long to wait for more after the first
     * @param idle how long to wait for the first; then there are none
     */
    Map<String, List<Arrival>> take(Duration linger, Duration idle) throws InterruptedException {
        lock.lock();
        try {
            Map<String, List<Arrival>> batches = new LinkedHashMap<>();
            if (!awaitArrival(idle)) {
                return batches;
            }
            linger(linger);
            queues.forEach((client, queue) -> {
                List<Arrival> batch = queue.take();
                waiting -= batch.size();
                if (!batch.isEmpty()) {
                    batches.put(client, batch);
                }
            });
            return batches;
        } finally {
            lock.unlock();
        }
    }

    private boolean awaitArrival(Duration idle) throws InterruptedException {
        long nanos = idle.toNanos();
        while (waiting == 0) {
            if (nanos <= 0) {
                return false;
            }
            nanos = arrived.awaitNanos(nanos);
        }
        return true;
    }

    private void linger(Duration linger) throws InterruptedException {
        long nanos = linger.toNanos();
        while (nanos > 0 && queues.values().stream().allMatch(q -> q.arrivals.size() < batchMost)) {
            nanos = arrived.awaitNanos(nanos);
        }
    }

    /** Messages that wait. */
    int waiting() {
        lock.lock();
        try {
            return waiting;
        } finally {
            lock.unlock();
        }
    }

    /** Messages of one session that wait. */
    int waiting(String client) {
        lock.lock();
        try {
            return queue(client).arrivals.size();
        } finally {
            lock.unlock();
        }
    }

    /** Whether nothing of a session waits, and none of its batches was full for so long: nothing waits at the broker. */
    boolean calm(String client, Duration span) {
        lock.lock();
        try {
            Queue queue = queue(client);
            return queue.arrivals.isEmpty() && System.nanoTime() - queue.fullNanos > span.toNanos();
        } finally {
            lock.unlock();
        }
    }

    private Queue queue(String client) {
        @Nullable Queue queue = queues.get(client);
        if (queue == null) {
            throw new IllegalArgumentException("no session " + client);
        }
        return queue;
    }

    private static int length(Arrival arrival) {
        return arrival.message().bytes().length;
    }
}
