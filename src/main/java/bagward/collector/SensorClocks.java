package bagward.collector;

import bagward.climate.SensorId;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How far the clocks of sensors are from the station's. Of one message nothing can be said, since it may come late; but a
 * gateway that delivers a backlog catches up, and a clock that is off stays off. So the smallest distance among the newest
 * messages counts. Safe for use by several threads.
 */
final class SensorClocks {
    private static final int MESSAGES = 5;
    /** A burst of messages says nothing yet. */
    private static final Duration SPAN = Duration.ofMinutes(3);
    /** What was seen longer ago says nothing any more. */
    private static final Duration FRESH = Duration.ofHours(3);

    private final Map<SensorId, Deque<Seen>> seen = new HashMap<>();

    private record Seen(Instant arrivedAt, Duration ahead) {}

    /**
     * Notes a message.
     *
     * @param ahead its newest time less the time of its arrival
     */
    synchronized void heard(SensorId sensor, Instant arrivedAt, Duration ahead) {
        Deque<Seen> newest = seen.computeIfAbsent(sensor, s -> new ArrayDeque<>());
        newest.addLast(new Seen(arrivedAt, ahead));
        if (newest.size() > MESSAGES) {
            newest.removeFirst();
        }
    }

    /** How far each clock is ahead of the station's (negative: behind), where enough was heard to say. */
    synchronized Map<SensorId, Duration> ahead(Instant now) {
        Map<SensorId, Duration> ahead = new HashMap<>();
        seen.forEach((sensor, newest) -> judged(newest, now).ifPresent(by -> ahead.put(sensor, by)));
        return ahead;
    }

    private static Optional<Duration> judged(Deque<Seen> newest, Instant now) {
        Instant first = newest.getFirst().arrivedAt();
        Instant last = newest.getLast().arrivedAt();
        boolean enough = newest.size() == MESSAGES && !last.isBefore(first.plus(SPAN));
        boolean fresh = last.plus(FRESH).isAfter(now);
        return enough && fresh
                ? newest.stream().map(Seen::ahead).min(Comparator.comparing(Duration::abs))
                : Optional.empty();
    }
}
