package bagward.collector;

import bagward.climate.Reading;
import bagward.climate.ReadingFlag;
import bagward.climate.SeriesId;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;

/**
 * Parts readings that have no time of their own: two of a series in the same millisecond would be taken for one, so the
 * second is moved on by a millisecond. Used by one thread.
 */
final class ArrivalTimes {
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
}
