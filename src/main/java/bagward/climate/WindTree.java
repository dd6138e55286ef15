package bagward.climate;

import bagward.units.Checks;

/**
 * The classification tree for leaf wetness outdoors of Gleason et al. 1994 (Plant Dis. 78:1011) and Kim, Taylor and
 * Gleason 2002 (Plant Dis. 86:179, doi 10.1094/PDIS.2002.86.2.179), for hours of known wind.
 *
 * <p>It was fitted outdoors, under a sky that cools leaves at night. In still air it collapses to "less than 3.7 °C above
 * the dew point", about 79 %RH, and calls nearly every night in a bag wet: it is no rule for houses and bags.
 *
 * <p>The second inequality is used with the square of the humidity. Two public codes have it without; then the left side
 * never passes 1.84 while the limit is 37, and that branch could never be wet. The square itself is from memory.
 */
public final class WindTree {
    private static final double DRY_FROM_DEPRESSION = 3.7;
    private static final double CALM_BELOW = 2.5;
    private static final double CALM_LIMIT = 14.4674;
    private static final double WINDY_LEAST_HUMIDITY = 87.8;
    private static final double WINDY_LIMIT = 37.0;

    private WindTree() {}

    /**
     * Whether leaves are wet in an hour.
     *
     * @param celsius air temperature, °C, 0 or more
     * @param percent relative humidity, %RH
     * @param metresPerSecond wind, m s⁻¹
     */
    public static boolean wet(double celsius, double percent, double metresPerSecond) {
        Checks.within("temperature for the wetness tree", celsius, 0, 60, "°C");
        Checks.within("relative humidity", percent, 0, 100, "%RH");
        Checks.within("wind", metresPerSecond, 0, 75, "m s⁻¹");
        double depression = MoistAir.dewPointDepressionDegrees(celsius, percent);
        if (depression >= DRY_FROM_DEPRESSION) {
            return false;
        }
        if (metresPerSecond < CALM_BELOW) {
            return calmScore(celsius, percent, metresPerSecond, depression) > CALM_LIMIT;
        }
        return percent >= WINDY_LEAST_HUMIDITY
                && windyScore(celsius, percent, metresPerSecond, depression) > WINDY_LIMIT;
    }

    /** Left side of the inequality for wind below 2.5 m s⁻¹. */
    static double calmScore(double celsius, double percent, double wind, double depression) {
        return 1.6064 * Math.sqrt(celsius)
                + 0.0036 * celsius * celsius
                + 0.1531 * percent
                - 0.4599 * wind * depression
                - 0.0035 * celsius * percent;
    }

    /** Left side of the inequality for more wind. */
    static double windyScore(double celsius, double percent, double wind, double depression) {
        return 0.7921 * Math.sqrt(celsius)
                + 0.0046 * percent * percent
                - 2.3889 * wind
                - 0.0390 * celsius * wind
                + 1.0613 * wind * depression;
    }
}
