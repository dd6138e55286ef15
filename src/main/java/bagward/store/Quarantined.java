package bagward.store;

import java.time.Instant;

/**
 * A message (or a part of one) that could not be used, kept so that a person can look at it.
 *
 * @param arrivedAt when it arrived
 * @param topic its topic
 * @param payload its payload as it came
 * @param reason why it could not be used, one sentence with the rule
 */
public record Quarantined(Instant arrivedAt, String topic, Payload payload, String reason) {}
