package bagward.store;

import java.time.Instant;

/**
 * A topic that was heard but is not configured.
 *
 * @param topic the topic
 * @param messages how many messages were heard on it
 * @param lastAt when the last one arrived
 * @param sample its payload as text, cut to 400 characters
 */
public record HeardTopic(String topic, long messages, Instant lastAt, String sample) {}
