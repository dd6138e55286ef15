package bagward.store;

import bagward.message.ChannelName;
import bagward.message.Parcel;
import java.time.Instant;

/**
 * One parcel on its way by one channel.
 *
 * @param number number of the parcel, in the order in which they were put
 * @param parcel the parcel
 * @param channel the channel
 * @param state how it stands
 * @param tries how often it was tried in vain
 * @param nextTry when it is tried next, while it waits
 * @param changedAt when it was tried last, handed over or given up; when it was put, before the first try
 * @param trouble why the last try failed; empty if it did not
 */
public record Delivery(
        long number,
        Parcel parcel,
        ChannelName channel,
        State state,
        int tries,
        Instant nextTry,
        Instant changedAt,
        String trouble) {
    /** How a delivery stands. */
    public enum State {
        /** It is tried, now or later. */
        WAITING,
        /** The other side has taken it over. */
        HANDED_OVER,
        /** It is not tried any more. */
        GIVEN_UP
    }
}
