package bagward.collector.payload;

import bagward.collector.sparkplug.NodeId;
import bagward.collector.sparkplug.SparkplugTopic;
import java.util.List;
import java.util.Optional;

/**
 * Sparkplug B 3.0: what a message says rests on the births before it. A place finds its metric by the whole name.
 *
 * @param node the edge node that speaks for the sensor
 * @param device the device that the sensor is; empty if its metrics are those of the edge node itself
 * @param places what is read
 */
public record SparkplugDevice(NodeId node, Optional<String> device, List<Place> places) implements PayloadFormat {
    /** Copies the list. */
    public SparkplugDevice {
        places = List.copyOf(places);
    }

    /** The topics that must be heard for it: all of the edge node, since its sequence numbers count all. */
    public TopicFilter topics() {
        return new TopicFilter(SparkplugTopic.filter(node));
    }
}
