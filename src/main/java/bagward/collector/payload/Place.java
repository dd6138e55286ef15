package bagward.collector.payload;

import bagward.climate.LightSource;
import bagward.units.Quantity;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where in a payload one quantity stands, and how it is written there.
 *
 * @param quantity what is measured
 * @param at JSON Pointer (RFC 6901) of the value, or name (or its ending) in SenML; empty for a bare number, and in SenML
 *     where the unit alone tells
 * @param unit the unit; may be empty in SenML, whose records name their own
 * @param unitAt JSON Pointer to the unit's name in the payload, in place of {@code unit}
 * @param light how light converts; {@link LightConversion#UNKNOWN} for other quantities
 * @param ceiling top of the sensor's range in the payload's unit: values there are stored and marked as clipped
 */
public record Place(
        Quantity quantity,
        String at,
        Optional<MeasureUnit> unit,
        Optional<String> unitAt,
        LightConversion light,
        OptionalDouble ceiling) {

    /** A value with a fixed unit and no ceiling; light is daylight. */
    public static Place of(Quantity quantity, String at, MeasureUnit unit) {
        return new Place(
                quantity,
                at,
                Optional.of(unit),
                Optional.empty(),
                LightConversion.of(LightSource.DAYLIGHT),
                OptionalDouble.empty());
    }

    /** The same with the top of the sensor's range, in the payload's unit. */
    public Place withCeiling(double top) {
        return new Place(quantity, at, unit, unitAt, light, OptionalDouble.of(top));
    }
}
