package bagward.collector.payload;

import bagward.climate.Reading;
import bagward.climate.ReadingFlag;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;

/**
 * Decides whether a number of a payload is a reading.
 *
 * @param futureTolerance how far ahead of the station's clock a sensor's clock may be
 * @param pastTolerance how old a reading may be when it arrives; clocks that lost their battery start at some year of the past
 */
record Judge(Duration futureTolerance, Duration pastTolerance) {
    /** Humidity up to here is a wet sensor and stored as 100 %RH (Austrian AWS rules, ET AWS-1 Doc. 9(2), 2002). */
    static final double HIGHEST_HUMIDITY = 104;

    /**
     * Light down to here is the zero error of a dark sensor and stored as 0, µmol m⁻² s⁻¹; common practice, no source.
     */
    static final double LOWEST_LIGHT = -5;

    /** No sensor of this trade is older: an earlier time means that its clock was never set. */
    static final Instant EARLIEST = Instant.parse("2000-01-01T00:00:00Z");

    /**
     * The reading that a number is.
     *
     * @throws RefusedPayloadException if it cannot be one
     */
    Reading judge(SensorId sensor, RawValue raw, Instant arrivedAt) {
        Place place = raw.place();
        EnumSet<ReadingFlag> flags = EnumSet.noneOf(ReadingFlag.class);
        if (!raw.timed()) {
            flags.add(ReadingFlag.TIME_OF_ARRIVAL);
        }
        if (place.ceiling().isPresent() && raw.value() >= place.ceiling().getAsDouble()) {
            flags.add(ReadingFlag.CLIPPED);
        }
        double value = pulledIn(place.quantity(), canonical(raw), flags);
        checkRange(place.quantity(), value, raw);
        Instant measuredAt = raw.measuredAt().orElse(arrivedAt);
        checkTime(measuredAt, arrivedAt);
        return new Reading(new SeriesId(sensor, place.quantity()), measuredAt, value, flags);
    }

    private static double canonical(RawValue raw) {
        return raw.unit()
                .toCanonical(raw.value(), raw.place().light())
                .orElseThrow(
                        () -> new RefusedPayloadException(
                                "light in " + raw.unit().code()
                                        + " cannot be converted: name a light source that has a factor for it, or state the factor"));
    }

    private static double pulledIn(Quantity quantity, double value, EnumSet<ReadingFlag> flags) {
        if (quantity == Quantity.HUMIDITY && value > Quantity.HUMIDITY.highest() && value <= HIGHEST_HUMIDITY) {
            flags.add(ReadingFlag.HUMIDITY_CAPPED);
            return Quantity.HUMIDITY.highest();
        }
        if (quantity == Quantity.LIGHT && value < 0 && value >= LOWEST_LIGHT) {
            return 0;
        }
        return value;
    }

    private static void checkRange(Quantity quantity, double value, RawValue raw) {
        if (!(value >= quantity.lowest() && value <= quantity.highest())) {
            throw new RefusedPayloadException(quantity.word() + " of " + raw.value() + " "
                    + raw.unit().code() + " is outside the physical limits " + quantity.lowest() + " to "
                    + quantity.highest() + " " + quantity.unitSymbol() + ": check the sensor and its unit");
        }
    }

    private void checkTime(Instant measuredAt, Instant arrivedAt) {
        if (measuredAt.isAfter(arrivedAt.plus(futureTolerance))) {
            throw new RefusedPayloadException("the time " + measuredAt + " is more than "
                    + futureTolerance.toSeconds() + " s after its arrival at " + arrivedAt
                    + ": check the clocks of sensor and station");
        }
        if (measuredAt.isBefore(EARLIEST)) {
            throw new RefusedPayloadException(
                    "the time " + measuredAt + " is before " + EARLIEST + ": the sensor's clock was never set");
        }
        if (measuredAt.isBefore(arrivedAt.minus(pastTolerance))) {
            throw new RefusedPayloadException("the time " + measuredAt + " is more than " + pastTolerance.toDays()
                    + " days before its arrival at " + arrivedAt
                    + ": check the sensor's clock; for old recordings set collector.past-tolerance");
        }
    }
}
