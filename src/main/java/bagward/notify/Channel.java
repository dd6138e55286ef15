package bagward.notify;

import bagward.message.ChannelName;

/** One way to deliver. Used by one thread at a time. */
public interface Channel extends AutoCloseable {
    /** Its name in the configuration. */
    ChannelName name();

    /** What it is, for people: "e-mail", "webhook", "MQTT". */
    String kind();

    /** Where it leads, for people; never a secret. */
    String address();

    /**
     * Hands over; when this returns the other side has taken it.
     *
     * @throws DeliveryException if it has not, or it is not known whether it has
     */
    void hand(Outgoing outgoing);

    @Override
    default void close() {}
}
