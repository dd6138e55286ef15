package bagward.collector.sparkplug;

/**
 * A command that is ready to be published, at quality 0 and not retained.
 *
 * @param topic its topic
 * @param bytes its payload; nobody changes it
 */
@SuppressWarnings("ArrayRecordComponent") // compared by nobody
public record Command(String topic, byte[] bytes) {}
