package bagward.collector.payload;

import bagward.climate.SensorId;
import java.util.Optional;

/**
 * Where the messages of a sensor come from. A sensor with a topic for each quantity has several.
 *
 * @param sensor the sensor
 * @param topic the topics that are listened to for it
 * @param format how its messages are written
 * @param gateway name of the gateway that sends for it, and may send the backlog of days at once; empty if it sends for
 *     itself
 */
public record SensorSource(SensorId sensor, TopicFilter topic, PayloadFormat format, Optional<String> gateway) {
    /** One that sends for itself, or, with Sparkplug B, by its edge node. */
    public SensorSource(SensorId sensor, TopicFilter topic, PayloadFormat format) {
        this(
                sensor,
                topic,
                format,
                format instanceof SparkplugDevice device
                        ? Optional.of(device.node().toString())
                        : Optional.empty());
    }
}
