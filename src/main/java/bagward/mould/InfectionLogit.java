package bagward.mould;

/**
 * Botrytis on ripe grape berries as a logistic regression on wet hours and temperature.
 *
 * <p>Broome, English, Marois, Latorre and Aviles (1995), Development of an infection model for Botrytis bunch rot of
 * grapes based on wetness duration and temperature, Phytopathology 85:97-102. Fitted on 4 to 20 wet hours and 12 to 30 °C
 * (R² 0.78); anything else is extrapolated and says so. The field bands of the paper are limits of the logit, not of the
 * probability: none up to 0, low to 0.5, moderate to 1, high from 1 on. A dry time of more than 4 h stops the count. The
 * coefficient of hours times temperature was taken from two public readings of the paper that agree; it puts the best
 * temperature at 20.4 °C, where the paper saw its peak.
 */
public record InfectionLogit() implements SpellModel {
    private static final double CONSTANT = -2.647866;
    private static final double PER_HOUR = -0.374927;
    private static final double PER_HOUR_DEGREE = 0.061601;
    private static final double PER_HOUR_SQUARE_DEGREE = -0.001511;
    private static final DryBreak BREAK = DryBreak.endingBeyond(4);
    private static final BandLimits BANDS = new BandLimits(0, 0.5, 1);

    /**
     * Log odds of infection.
     *
     * @param hours wet time, h
     * @param celsius mean temperature of the wet time, °C
     */
    public static double logit(double hours, double celsius) {
        return CONSTANT + hours * slope(celsius);
    }

    /**
     * Wet hours after which the logit reaches a limit.
     *
     * @param logit the limit
     * @param celsius mean temperature of the wet time, °C
     * @return h; infinite where more wet hours do not raise the logit
     */
    public static double hoursTo(double logit, double celsius) {
        double slope = slope(celsius);
        return slope > 0 ? (logit - CONSTANT) / slope : Double.POSITIVE_INFINITY;
    }

    /**
     * Share of berries infected.
     *
     * @param hours wet time, h
     * @param celsius mean temperature of the wet time, °C
     * @return 0 to 1
     */
    public static double probability(double hours, double celsius) {
        return 1 / (1 + Math.exp(-logit(hours, celsius)));
    }

    private static double slope(double celsius) {
        return PER_HOUR + PER_HOUR_DEGREE * celsius + PER_HOUR_SQUARE_DEGREE * celsius * celsius;
    }

    @Override
    public WetRule wetRule() {
        return WetRule.WATER;
    }

    @Override
    public DryBreak dryBreak() {
        return BREAK;
    }

    @Override
    public double score(double hours, double celsius) {
        return logit(hours, celsius);
    }

    @Override
    public BandLimits usualBands() {
        return BANDS;
    }

    @Override
    public String reason(String name, double hours, double celsius, BandLimits bands) {
        double needed = hoursTo(bands.canBeHigh() ? bands.high() : bands.moderate(), celsius);
        String need = Double.isInfinite(needed)
                ? Say.format(", %s does not gain at this temperature", name)
                : Say.format(", %s needs %.1f h", name, needed);
        boolean fitted = hours >= 4 && hours <= 20 && celsius >= 12 && celsius <= 30;
        return Say.wet(hours, celsius) + need + (fitted ? "" : " (outside what the model was fitted on)");
    }
}
