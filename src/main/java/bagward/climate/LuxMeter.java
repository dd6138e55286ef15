package bagward.climate;

import bagward.fault.ImpossibleValueException;
import bagward.units.Checks;
import bagward.units.Illuminance;
import bagward.units.Quantity;
import java.time.Instant;
import java.util.Set;

/**
 * A sensor that measures lux and is read as photon flux.
 *
 * <p>Small lux chips end at 65 535 lx or below, full sun is about 108 000 lx: a value at the end of the range means "at
 * least this much", and light sums and sunny days made from such values come out too low. Such readings are marked.
 *
 * @param factor how its lux become photons, with its source
 * @param ceiling highest value that the chip can give, lx
 */
public record LuxMeter(LightFactor factor, double ceiling) {
    /** End of the range of a chip with 16 bits and one count for each lux, lx. */
    public static final double SIXTEEN_BITS = 65_535;

    /** Refuses a ceiling that no lux meter has. */
    public LuxMeter {
        Checks.within("ceiling of a lux meter", ceiling, 1, 150_000, "lx");
    }

    /**
     * A reading of photon flux from lux.
     *
     * @param series the light series of the sensor
     * @param lux as the sensor gave it
     * @return the reading, marked as clipped if the sensor was at its ceiling
     * @throws ImpossibleValueException if the series is not one of light, or the value is impossible
     */
    public Reading reading(SeriesId series, Instant measuredAt, double lux) {
        if (series.quantity() != Quantity.LIGHT) {
            throw new ImpossibleValueException("lux for the series " + series + " is impossible: give a light series");
        }
        double micromoles = Light.photonFlux(new Illuminance(lux), factor).micromoles();
        Set<ReadingFlag> flags = lux >= ceiling ? Set.of(ReadingFlag.CLIPPED) : Set.of();
        return new Reading(series, measuredAt, micromoles, flags);
    }
}
