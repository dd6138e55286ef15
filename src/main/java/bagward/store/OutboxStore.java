package bagward.store;

import bagward.message.ChannelName;
import bagward.message.Outbox;
import bagward.message.Parcel;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The outbox on disk. Every call is on disk when it returns, or throws {@link StoreException} and did nothing. */
public interface OutboxStore extends Outbox {
    /** How long it is remembered that a state was told, days. */
    int TOLD_DAYS = 400;

    /** How long parcels are kept that wait nowhere any more, days. */
    int PARCEL_DAYS = 60;

    /** Puts a trial of a channel. */
    void putTrial(Parcel.Trial trial);

    /**
     * Puts a parcel for every line of the alarm journal that was written since the last call, and notes how far it came,
     * both or neither. What was written before the first call of all is not put.
     *
     * @param listeners channels that follow the journal; with none the lines are passed over
     * @return how many were put
     */
    int takeJournal(Set<ChannelName> listeners, Instant now);

    /** What waits for a channel, in the order in which it was put. */
    List<Delivery> waiting(ChannelName channel, int most);

    /** How much waits for a channel. */
    long waitingCount(ChannelName channel);

    /** The newest deliveries of all channels and states, newest first. */
    List<Delivery> newest(int most);

    /** The newest delivery of a channel that was handed over. */
    Optional<Delivery> lastHandedOver(ChannelName channel);

    /** A parcel by its number. */
    Optional<Parcel> find(long number);

    /** Notes that the other side has taken over. */
    void handedOver(Delivery delivery, Instant at);

    /** Notes that a try failed. */
    void failed(Delivery delivery, Instant at, Instant nextTry, String trouble);

    /** Notes that it is not tried any more. */
    void givenUp(Delivery delivery, Instant at, String why);

    /** Gives up what waits for channels that are not there any more. */
    int giveUpExcept(Set<ChannelName> there, Instant at);

    /** Forgets what is older than {@link #PARCEL_DAYS} and {@link #TOLD_DAYS}. */
    void forgetOld(Instant now);
}
