package bagward.collector.payload;

import java.time.Instant;
import java.util.Optional;

/**
 * A number as it stands in a payload.
 *
 * @param place what it is meant to be
 * @param value in the payload's unit, finite
 * @param unit the payload's unit
 * @param measuredAt the payload's time; empty if it has none
 * @param timed whether that time is the sensor's own; false if it is counted back from the arrival
 */
record RawValue(Place place, double value, MeasureUnit unit, Optional<Instant> measuredAt, boolean timed) {

    static RawValue at(Place place, double value, MeasureUnit unit, Optional<Instant> measuredAt) {
        return new RawValue(place, value, unit, measuredAt, measuredAt.isPresent());
    }
}
