package bagward.notify;

import bagward.message.ChannelName;
import bagward.message.Message;
import bagward.store.Delivery;
import java.util.List;
import java.util.Optional;

/** What pages see of the deliveries. Safe for use by several threads. */
public interface DeliveryDesk {
    /** Every channel, in the order of the configuration. */
    List<ChannelState> channels();

    /** The newest deliveries, newest first. */
    List<Delivery> newest(int most);

    /**
     * Sends a trial by the usual way.
     *
     * @param by who asked for it
     * @return whether there is such a channel
     */
    boolean tryOut(ChannelName channel, String by);

    /** The message that a link belongs to; empty if it is not one of ours, too old, or the message is forgotten. */
    Optional<Message> answered(String token);

    /** Signs of life and the ping, one sentence each; empty if none is configured. */
    List<String> signsOfLife();
}
