package bagward.collector.payload;

import bagward.climate.SensorId;

/**
 * Where the messages of a sensor come from. A sensor with a topic for each quantity has several.
 *
 * @param sensor the sensor
 * @param topic the topics that are listened to for it
 * @param format how its messages are written
 */
public record SensorSource(SensorId sensor, TopicFilter topic, PayloadFormat format) {}
