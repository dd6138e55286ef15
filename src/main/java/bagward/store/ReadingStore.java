package bagward.store;

import bagward.climate.Reading;
import bagward.climate.ReadingFlag;
import bagward.climate.ReadingSource;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Readings on disk; one for each series and time. Safe for use by several threads.
 *
 * <p>Two readings of one series and time with the same value are one. If their values differ, the higher one is kept,
 * whatever came first: every alarm is about too much, and the rule must not depend on the order of arrival.
 */
public interface ReadingStore extends ReadingSource {
    /**
     * Stores a batch. When it returns, all of it is on disk. When it throws, nothing of it was promised: the embedded store
     * then holds none of it, a server may hold any part. Appending the same batch again is always right.
     *
     * @throws StoreException if the batch could not be stored
     */
    Receipt append(List<Reading> batch);

    /**
     * Deletes the oldest readings of every series before an instant. Others are stored and read meanwhile; call it
     * until nothing is left. A server that takes no such order deletes nothing here.
     *
     * @param before readings measured before this go
     * @param most how many at most in one go, above 0; of one and the same instant there may be more
     * @return how many went; 0 if none is left, or none is deleted
     * @throws StoreException if they could not be deleted; none of them are then
     */
    default int deleteBefore(Instant before, int most) {
        return 0;
    }

    /**
     * The one of two readings of one series and time that is kept: the higher one, and of equal ones either, with the
     * flags of both.
     */
    static Reading kept(Reading one, Reading other) {
        if (one.value() != other.value()) {
            return one.value() > other.value() ? one : other;
        }
        Set<ReadingFlag> flags = EnumSet.noneOf(ReadingFlag.class);
        flags.addAll(one.flags());
        flags.addAll(other.flags());
        return new Reading(one.series(), one.measuredAt(), one.value(), flags);
    }

    /**
     * What became of a batch.
     *
     * @param stored readings that are new
     * @param repeated readings that were there already with the same value
     * @param contradicted readings whose series and time were there with another value
     */
    record Receipt(int stored, int repeated, int contradicted) {}
}
