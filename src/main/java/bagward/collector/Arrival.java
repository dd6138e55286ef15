package bagward.collector;

import bagward.collector.payload.Message;

/**
 * A message that waits to be committed.
 *
 * @param message the message
 * @param id packet identifier, which holds on its own connection only
 * @param quality quality of service, 0 to 2
 * @param perhapsRepeated whether the broker may have sent it before
 * @param from the connection that it came by, and by which alone it may be acknowledged
 */
record Arrival(Message message, int id, int quality, boolean perhapsRepeated, Connection from) {
    /** Tells the broker that it need not send it again. */
    void acknowledge() {
        from.acknowledge(this);
    }
}
