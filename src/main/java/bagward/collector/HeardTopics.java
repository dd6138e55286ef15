package bagward.collector;

import bagward.clockwork.Clockwork;
import bagward.clockwork.Pause;
import bagward.collector.payload.Message;
import bagward.store.HeardTopic;
import bagward.store.Payload;
import bagward.store.QuarantineStore;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Counts messages on topics that nobody configured, and passes them on every two seconds, on a thread of its own: a database
 * that keeps it waiting keeps no reading waiting. Safe for several threads.
 */
final class HeardTopics implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(HeardTopics.class);
    private static final int MOST_TOPICS = 2000;
    private static final int SAMPLE = 400;
    private static final Pause EVERY = new Pause(Duration.ofSeconds(2), Duration.ofSeconds(2));

    private final QuarantineStore store;
    private final Clock clock;
    private final Map<String, HeardTopic> waiting = new LinkedHashMap<>();
    private long total;
    private final Clockwork clockwork = Clockwork.resting("keep heard topics", EVERY, this::flush);

    HeardTopics(QuarantineStore store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    void start() {
        clockwork.start();
    }

    /** Counts a message; beyond 2000 topics between two flushes only the total grows. */
    synchronized void add(Message message) {
        total++;
        if (waiting.size() >= MOST_TOPICS && !waiting.containsKey(message.topic())) {
            return;
        }
        Instant now = clock.instant();
        HeardTopic one = new HeardTopic(message.topic(), 1, now, sample(message));
        waiting.merge(
                message.topic(),
                one,
                (before, newer) ->
                        new HeardTopic(newer.topic(), before.messages() + 1, newer.lastAt(), newer.sample()));
    }

    synchronized long total() {
        return total;
    }

    /** Passes on what was counted; keeps it if the store is away. */
    private void flush() {
        List<HeardTopic> due;
        synchronized (this) {
            if (waiting.isEmpty()) {
                return;
            }
            due = List.copyOf(waiting.values());
            waiting.clear();
        }
        try {
            store.heard(due);
        } catch (RuntimeException e) {
            LOG.warn("Topics that were heard are not stored yet: {}", e.getMessage());
            takeBack(due);
        }
    }

    private synchronized void takeBack(List<HeardTopic> due) {
        for (HeardTopic topic : due) {
            waiting.merge(
                    topic.topic(),
                    topic,
                    (newer, before) -> new HeardTopic(
                            newer.topic(), newer.messages() + before.messages(), newer.lastAt(), newer.sample()));
        }
    }

    private static String sample(Message message) {
        String text = Payload.of(message.bytes()).readable();
        return text.length() > SAMPLE ? text.substring(0, SAMPLE) : text;
    }

    /** What was counted since the last pass is forgotten: it only tells people what else is there. */
    @Override
    public void close() {
        clockwork.close();
    }
}
