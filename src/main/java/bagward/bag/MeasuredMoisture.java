package bagward.bag;

import bagward.fault.ImpossibleValueException;
import bagward.units.Checks;
import bagward.units.SeedMoisture;

/**
 * Moisture of seed as a person measured it.
 *
 * @param moisture what was found, at most 60 % of the moist seed
 * @param method how it was measured, in words, such as "oven 103 °C, 17 h" or the name of a meter
 */
public record MeasuredMoisture(SeedMoisture moisture, String method) {
    private static final double HIGHEST = 60;

    /** Refuses what ripe seed cannot hold, and a figure of which nobody can tell how it came about. */
    public MeasuredMoisture {
        Checks.within("measured seed moisture", moisture.percent(), 0, HIGHEST, "% of the moist seed");
        if (method.isBlank()) {
            throw new ImpossibleValueException("a seed moisture needs the method in words: say how it was measured");
        }
    }

    /**
     * What a person found.
     *
     * @param percent % of the moist seed
     */
    public static MeasuredMoisture of(double percent, String method) {
        return new MeasuredMoisture(new SeedMoisture(percent), method);
    }
}
