package bagward.notify;

import bagward.message.ChannelName;
import java.time.Instant;
import java.util.Optional;

/**
 * How a channel stands.
 *
 * @param name its name
 * @param kind what it is, for people
 * @param address where it leads, for people
 * @param waiting parcels that wait for it
 * @param lastHandedOver when it last took one
 * @param trouble why its last try failed; empty if it did not
 * @param troubleSince since when it has failed without a success
 */
public record ChannelState(
        ChannelName name,
        String kind,
        String address,
        long waiting,
        Optional<Instant> lastHandedOver,
        Optional<String> trouble,
        Optional<Instant> troubleSince) {}
