package bagward.notify;

import bagward.message.MessagePlan;
import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * What is delivered, to whom and how.
 *
 * @param plan who is told, and when
 * @param channels ways to deliver
 * @param pages address under which people reach the pages from outside, for links in messages
 * @param mqtt what is published at the station's broker
 * @param ping an address that is called while all is well
 */
public record DeliverySettings(
        MessagePlan plan, List<ChannelPlan> channels, Optional<URI> pages, Optional<Mqtt> mqtt, Optional<Ping> ping) {
    /** Nothing is delivered. */
    public static final DeliverySettings NONE =
            new DeliverySettings(MessagePlan.NOBODY, List.of(), Optional.empty(), Optional.empty(), Optional.empty());

    /** Copies the list. */
    public DeliverySettings {
        channels = List.copyOf(channels);
    }

    /**
     * What is published at the station's broker.
     *
     * @param topic what all topics begin with
     * @param every time between two signs of life
     */
    public record Mqtt(String topic, Duration every) {}

    /**
     * An address that is called while all is well, so that its owner notices when the calls stop.
     *
     * @param url the address
     * @param every time between two calls
     */
    public record Ping(URI url, Duration every) {}
}
