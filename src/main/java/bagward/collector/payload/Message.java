package bagward.collector.payload;

import java.time.Instant;

/**
 * A message as it arrived.
 *
 * @param topic its topic
 * @param bytes its payload; nobody changes it
 * @param arrivedAt when it arrived, by the station's clock
 * @param retained whether the broker had kept it from before: how old it is, only it can say
 */
@SuppressWarnings("ArrayRecordComponent") // compared by nobody; copying every payload twice would be waste
public record Message(String topic, byte[] bytes, Instant arrivedAt, boolean retained) {}
