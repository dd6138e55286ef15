package bagward.collector.sparkplug;

import java.util.Arrays;
import java.util.Optional;

/**
 * A topic of an edge node: {@code spBv1.0/group/type/node} or {@code spBv1.0/group/type/node/device} (Sparkplug 3.0,
 * chapter 4).
 *
 * @param node the edge node
 * @param type what the message is
 * @param device the device behind it; empty for the edge node itself
 */
public record SparkplugTopic(NodeId node, Type type, Optional<String> device) {
    private static final String NAMESPACE = "spBv1.0";
    private static final int LEVELS_OF_NODE = 4;
    private static final int LEVELS_OF_DEVICE = 5;

    /** What a message is, by its topic. */
    public enum Type {
        /** Birth of an edge node: its metrics, with names, types and aliases. */
        NBIRTH,
        /** Death of an edge node; the broker sends it when the connection is gone. */
        NDEATH,
        /** Changed metrics of an edge node. */
        NDATA,
        /** A command to an edge node. */
        NCMD,
        /** Birth of a device. */
        DBIRTH,
        /** Death of a device: its edge node does not reach it any more. */
        DDEATH,
        /** Changed metrics of a device. */
        DDATA,
        /** A command to a device. */
        DCMD;

        boolean ofDevice() {
            return name().startsWith("D");
        }

        boolean command() {
            return this == NCMD || this == DCMD;
        }

        boolean birth() {
            return this == NBIRTH || this == DBIRTH;
        }
    }

    /** The topic that a text is; empty if it is none of an edge node or device. */
    public static Optional<SparkplugTopic> of(String text) {
        String[] levels = text.split("/", -1);
        if (levels.length < LEVELS_OF_NODE
                || levels.length > LEVELS_OF_DEVICE
                || !levels[0].equals(NAMESPACE)
                || Arrays.stream(levels).anyMatch(String::isEmpty)) {
            return Optional.empty();
        }
        boolean ofDevice = levels.length == LEVELS_OF_DEVICE;
        return Arrays.stream(Type.values())
                .filter(type -> type.name().equals(levels[2]) && type.ofDevice() == ofDevice)
                .findFirst()
                .map(type -> new SparkplugTopic(
                        new NodeId(levels[1], levels[3]), type, ofDevice ? Optional.of(levels[4]) : Optional.empty()));
    }

    /** A topic filter for all messages of an edge node and of the devices behind it. */
    public static String filter(NodeId node) {
        return NAMESPACE + "/" + node.group() + "/+/" + node.name() + "/#";
    }

    /** The topic of commands to an edge node. */
    static String commands(NodeId node) {
        return NAMESPACE + "/" + node.group() + "/" + Type.NCMD + "/" + node.name();
    }
}
