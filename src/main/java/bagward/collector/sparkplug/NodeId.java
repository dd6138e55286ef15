package bagward.collector.sparkplug;

import bagward.fault.ImpossibleValueException;

/**
 * An edge node: the gateway that speaks for its devices.
 *
 * @param group its group id
 * @param name its edge node id, unique in the group
 */
public record NodeId(String group, String name) implements Comparable<NodeId> {
    /** Refuses what cannot be a level of a topic. */
    public NodeId {
        level(group);
        level(name);
    }

    /**
     * The same text, if it can be a group id, edge node id or device id (Sparkplug 3.0, chapter 4.1).
     *
     * @throws ImpossibleValueException if it is empty or has one of the signs that part or match topics
     */
    public static String level(String text) {
        if (text.isBlank() || text.chars().anyMatch(c -> c == '/' || c == '+' || c == '#' || c == 0)) {
            throw new ImpossibleValueException("must be one level of a topic: not empty, without /, + and #");
        }
        return text;
    }

    @Override
    public int compareTo(NodeId other) {
        return toString().compareTo(other.toString());
    }

    @Override
    public String toString() {
        return group + "/" + name;
    }
}
