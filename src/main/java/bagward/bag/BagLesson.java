package bagward.bag;

/**
 * What one bag taught while a sensor hung in it. A parameter that its hours said nothing about (no night, no sun) has a
 * deviation of {@link #UNLEARNT}.
 *
 * @param closureByDay f by day with its standard error
 * @param closureByNight f by night
 * @param sunGain k, K per (W m⁻²)
 * @param responseMinutes tau, minutes
 * @param nightCooling how much cooler the bag air was than the house air at night, K
 * @param temperatureRest root mean square of what the balance left unexplained, K
 * @param humidityRest the same, %RH
 * @param days how many days of readings it rests on
 */
public record BagLesson(
        Spread closureByDay,
        Spread closureByNight,
        Spread sunGain,
        Spread responseMinutes,
        Spread nightCooling,
        double temperatureRest,
        double humidityRest,
        double days) {
    /** Standard error of a parameter that was not learnt, in any unit. */
    public static final double UNLEARNT = 1e6;
}
