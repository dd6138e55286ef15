package bagward.mould;

import bagward.fault.ImpossibleValueException;
import bagward.units.Checks;

/**
 * Infection by wetness and temperature: the wet hours that an organism needs at the mean temperature of a wet spell.
 *
 * <p>Magarey, Sutton and Thayer (2005), A simple generic infection model for foliar fungal plant pathogens,
 * Phytopathology 95:92-100, equations 1 and 2. The paper leaves open what holds at a temperature outside the limits: here
 * there is no infection, however long it is wet (our decision), so the longest need never caps an impossible one.
 *
 * @param minCelsius temperature at and below which nothing infects, °C
 * @param bestCelsius temperature of the shortest need, °C
 * @param maxCelsius temperature at and above which nothing infects, °C
 * @param shortestHours wet hours needed at the best temperature (20 % incidence or 5 % severity), h
 * @param longestHours longest need at any temperature at which it infects at all, h
 * @param dryBreak dry break that ends a spell; the published D50 where there is one
 */
public record WetnessInfection(
        double minCelsius,
        double bestCelsius,
        double maxCelsius,
        double shortestHours,
        double longestHours,
        DryBreak dryBreak)
        implements SpellModel {
    /** Refuses temperatures out of order and needs that are not positive. */
    public WetnessInfection {
        Checks.within("lowest temperature of infection", minCelsius, -20, 60, "°C");
        Checks.within("highest temperature of infection", maxCelsius, -20, 60, "°C");
        if (!(minCelsius < bestCelsius && bestCelsius < maxCelsius)) {
            throw new ImpossibleValueException("temperatures of infection " + minCelsius + ", " + bestCelsius + ", "
                    + maxCelsius + " °C are impossible: lowest, best and highest must rise");
        }
        Checks.within("shortest wet time needed", shortestHours, 0.1, 1000, "h");
        Checks.within("longest wet time needed", longestHours, shortestHours, 1000, "h");
    }

    /**
     * The longest need for an organism for which none was published: 3.8 + 3.0 times the shortest (regression over 64
     * studies in the same paper, RMS error 6 h).
     *
     * @param shortestHours wet hours needed at the best temperature, h
     * @return h
     */
    public static double longestFromShortest(double shortestHours) {
        return 3.8 + 3.0 * shortestHours;
    }

    /**
     * Response to temperature, equation 2.
     *
     * @param celsius °C
     * @return 0 (no infection) to 1 (best)
     */
    public double response(double celsius) {
        if (!(celsius > minCelsius && celsius < maxCelsius)) {
            return 0;
        }
        double above = maxCelsius - bestCelsius;
        double below = bestCelsius - minCelsius;
        return (maxCelsius - celsius) / above * Math.pow((celsius - minCelsius) / below, below / above);
    }

    /**
     * Wet hours needed, equation 1.
     *
     * @param celsius mean temperature of the wet time, °C
     * @return h; infinite outside the temperature limits
     */
    public double neededHours(double celsius) {
        double response = response(celsius);
        return response == 0 ? Double.POSITIVE_INFINITY : Math.min(shortestHours / response, longestHours);
    }

    @Override
    public WetRule wetRule() {
        return WetRule.WATER;
    }

    /** Wet hours as a share of the needed ones: 1 when infection is expected. */
    @Override
    public double score(double hours, double celsius) {
        return hours / neededHours(celsius);
    }

    @Override
    public BandLimits usualBands() {
        return BandLimits.OF_INFECTION;
    }

    @Override
    public String reason(String name, double hours, double celsius, BandLimits bands) {
        double needed = neededHours(celsius);
        return Double.isInfinite(needed)
                ? Say.wet(hours, celsius)
                        + Say.format(", %s infects only between %.0f and %.0f °C", name, minCelsius, maxCelsius)
                : Say.wet(hours, celsius)
                        + Say.format(", %s needs %.1f h", name, needed)
                        + Say.forHigh(needed * bands.high(), bands);
    }
}
