package bagward.collector.sparkplug;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The edge nodes that sensors are behind. Their messages must be taken in the order of arrival, since what a data message
 * says rests on the birth before it. Safe for several threads.
 */
public final class EdgeNodes {
    private final Map<NodeId, EdgeNode> nodes = new TreeMap<>();

    /** @param followed for each edge node the devices that are of interest; empty text for the edge node itself */
    public EdgeNodes(Map<NodeId, Set<String>> followed) {
        followed.forEach((id, devices) -> nodes.put(id, new EdgeNode(id, devices)));
    }

    /**
     * Takes the next message.
     *
     * @return what it says of a device that is of interest
     * @throws SparkplugException if the payload cannot be used
     */
    public synchronized Said take(SparkplugTopic topic, byte[] payload, Instant arrivedAt) {
        EdgeNode node = nodes.get(topic.node());
        if (node == null || topic.type().command()) {
            return Said.NOTHING;
        }
        return node.take(topic, PayloadReader.read(payload), arrivedAt);
    }

    /** The commands by which edge nodes are to be asked for their births now; they count as sent. */
    public synchronized List<Command> requests(Instant now) {
        return nodes.values().stream()
                .flatMap(node -> node.request(now).stream())
                .toList();
    }

    /** Since when a device is offline, as its edge node or the broker said; empty if nobody said so. */
    public synchronized Optional<Instant> offlineSince(NodeId node, Optional<String> device) {
        return Optional.ofNullable(nodes.get(node)).flatMap(n -> n.offlineSince(device.orElse(EdgeNode.ITSELF)));
    }

    /** How each edge node is. */
    public synchronized List<NodeState> states() {
        return nodes.values().stream().map(EdgeNode::state).toList();
    }
}
