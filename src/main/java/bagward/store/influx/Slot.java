package bagward.store.influx;

import bagward.climate.Reading;
import bagward.climate.SeriesId;
import java.time.Instant;

/**
 * What identifies a reading.
 *
 * @param series its series
 * @param at its time
 */
record Slot(SeriesId series, Instant at) {
    /** That of a reading. */
    static Slot of(Reading reading) {
        return new Slot(reading.series(), reading.measuredAt());
    }
}
