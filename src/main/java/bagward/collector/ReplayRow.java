package bagward.collector;

import java.time.Instant;
import java.util.List;

/**
 * One row of a recorded file, ready to send.
 *
 * @param at when it was recorded
 * @param messages its messages
 */
record ReplayRow(Instant at, List<Outgoing> messages) {
    /**
     * A message.
     *
     * @param topic its topic
     * @param json its payload
     */
    record Outgoing(String topic, String json) {}
}
