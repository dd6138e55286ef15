package bagward.climate;

import bagward.units.Checks;
import bagward.units.Quantity;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Set;

/**
 * A straight-line correction of a humidity sensor, from a date on: true = gain · read + offset.
 *
 * @param sensor the sensor
 * @param from first instant at which it holds
 * @param gain no unit, 0.2 to 5
 * @param offset %RH, −100 to 100
 */
public record HumidityCorrection(SensorId sensor, Instant from, double gain, double offset) {
    /** Refuses lines that no sensor would need. */
    public HumidityCorrection {
        Checks.within("gain of a correction", gain, 0.2, 5, "");
        Checks.within("offset of a correction", offset, -100, 100, "%RH");
    }

    /** Whether it concerns a reading: a humidity of its sensor, measured when it holds already. */
    public boolean concerns(Reading reading) {
        return reading.series().sensor().equals(sensor)
                && reading.series().quantity() == Quantity.HUMIDITY
                && !reading.measuredAt().isBefore(from);
    }

    /** The corrected reading, cut to 0 to 100 %RH and marked if it was above; the raw one stays as it is. */
    public Reading applyTo(Reading raw) {
        double corrected = gain * raw.value() + offset;
        Set<ReadingFlag> flags = EnumSet.noneOf(ReadingFlag.class);
        flags.addAll(raw.flags());
        if (corrected > 100) {
            flags.add(ReadingFlag.HUMIDITY_CAPPED);
        }
        return new Reading(raw.series(), raw.measuredAt(), Math.max(0, Math.min(100, corrected)), flags);
    }
}
