package bagward.collector.sparkplug;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;

/**
 * Puts the messages of one edge node in the order in which it sent them. MQTT keeps the order within a topic only, so data
 * can come before the birth that names it (seen with Artemis on topics that are new to it). What does not follow waits for
 * what is before it, two seconds at most.
 *
 * @param <T> what carries a message
 */
final class Reordering<T> {
    private static final long PATIENCE = Duration.ofSeconds(2).toNanos();
    private static final int MOST = 500;
    private static final int ROUND = 256;

    private final List<Held<T>> held = new ArrayList<>();
    private OptionalLong expected = OptionalLong.empty();
    private boolean born;

    private record Held<T>(T item, SparkplugTopic.Type type, OptionalLong number, long since) {}

    /** Takes a message; returns those whose turn has come. */
    List<T> take(T item, SparkplugTopic.Type type, OptionalLong number, long nanos) {
        Held<T> one = new Held<>(item, type, number, nanos);
        List<T> turn = new ArrayList<>();
        if (type == SparkplugTopic.Type.NDEATH) {
            turn.addAll(all());
            born = false;
        }
        if (number.isEmpty()) {
            turn.add(item);
        } else if (follows(one)) {
            pass(one, turn);
            passFollowing(turn);
        } else {
            held.add(one);
        }
        return held.size() > MOST ? joined(turn, all()) : turn;
    }

    /** The messages that have waited long enough, and those that follow them. */
    List<T> overdue(long nanos) {
        return held.stream().anyMatch(one -> nanos - one.since() > PATIENCE) ? all() : List.of();
    }

    /** All that wait, in the likely order. */
    List<T> all() {
        long start = expected.orElse(0);
        held.sort(Comparator.comparingLong(one -> Math.floorMod(one.number().orElse(start) - start, (long) ROUND)));
        List<T> turn = new ArrayList<>();
        held.forEach(one -> pass(one, turn));
        held.clear();
        return turn;
    }

    private boolean follows(Held<T> one) {
        if (one.type() == SparkplugTopic.Type.NBIRTH) {
            return true;
        }
        if (one.type() == SparkplugTopic.Type.DBIRTH && !born) {
            return false;
        }
        return expected.isEmpty() || expected.equals(one.number());
    }

    private void pass(Held<T> one, List<T> turn) {
        turn.add(one.item());
        born |= one.type() == SparkplugTopic.Type.NBIRTH;
        if (one.number().isPresent()) {
            expected = OptionalLong.of((one.number().getAsLong() + 1) % ROUND);
        }
    }

    private void passFollowing(List<T> turn) {
        for (int i = 0; i < held.size(); i++) {
            if (follows(held.get(i))) {
                pass(held.remove(i), turn);
                i = -1;
            }
        }
    }

    private static <T> List<T> joined(List<T> first, List<T> second) {
        first.addAll(second);
        return first;
    }
}
