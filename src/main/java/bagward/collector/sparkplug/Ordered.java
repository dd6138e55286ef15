package bagward.collector.sparkplug;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;

/**
 * Puts the messages of edge nodes in the order in which each of them sent its own. Used by one thread.
 *
 * @param <T> what carries a message
 */
public final class Ordered<T> {
    private final Map<NodeId, Reordering<T>> nodes = new TreeMap<>();

    /**
     * Takes a message; returns the messages whose turn has come.
     *
     * @param topic its topic, of an edge node that is followed
     * @param nanos a count of nanoseconds that nobody sets
     */
    public List<T> take(T item, SparkplugTopic topic, byte[] payload, long nanos) {
        if (topic.type().command()) {
            return List.of(item);
        }
        return nodes.computeIfAbsent(topic.node(), n -> new Reordering<>())
                .take(item, topic.type(), number(payload), nanos);
    }

    /** The messages that have waited long enough for what is before them. */
    public List<T> overdue(long nanos) {
        List<T> turn = new ArrayList<>();
        nodes.values().forEach(node -> turn.addAll(node.overdue(nanos)));
        return turn;
    }

    /** All that wait. */
    public List<T> all() {
        List<T> turn = new ArrayList<>();
        nodes.values().forEach(node -> turn.addAll(node.all()));
        return turn;
    }

    private static OptionalLong number(byte[] payload) {
        try {
            return PayloadReader.read(payload).sequence();
        } catch (SparkplugException unreadable) {
            return OptionalLong.empty();
        }
    }
}
