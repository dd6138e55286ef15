package bagward.collector;

import bagward.climate.Reading;
import bagward.climate.ReadingFlag;
import bagward.climate.SeriesId;
import bagward.store.ReadingStore;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Care for readings that have no time of their own. Two in the same millisecond would be taken for one, so the second is
 * moved on by a millisecond. One that the broker repeats would get a second time and become two, so it is looked for
 * among the newest of its series. Used by one thread.
 */
final class ArrivalTimes {
    /** Messages that were in flight together arrived within this time, seconds. */
    private static final int TOGETHER_SECONDS = 60;

    private final Map<SeriesId, Instant> newest = new HashMap<>();

    /** The reading at a time that no other of its series had from here. */
    Reading parted(Reading reading) {
        if (!reading.flags().contains(ReadingFlag.TIME_OF_ARRIVAL)) {
            return reading;
        }
        Instant before = newest.getOrDefault(reading.series(), Instant.MIN);
        Instant at = reading.measuredAt().isAfter(before) ? reading.measuredAt() : before.plusMillis(1);
        newest.put(reading.series(), at);
        return new Reading(reading.series(), at, reading.value(), reading.flags());
    }

    /**
     * Whether a reading that the broker says to have sent before is in the store with an earlier time of arrival.
     *
     * @throws bagward.store.StoreException if the store cannot be asked
     */
    static boolean isStored(Reading reading, ReadingStore store) {
        if (!reading.flags().contains(ReadingFlag.TIME_OF_ARRIVAL)) {
            return false;
        }
        Optional<Reading> last = store.newest(reading.series(), reading.measuredAt());
        if (last.isEmpty()) {
            return false;
        }
        Instant end = last.get().measuredAt();
        List<Reading> together =
                store.readings(reading.series(), end.minusSeconds(TOGETHER_SECONDS), end.plusMillis(1));
        return together.stream()
                .anyMatch(r -> r.value() == reading.value() && r.flags().contains(ReadingFlag.TIME_OF_ARRIVAL));
    }
}
