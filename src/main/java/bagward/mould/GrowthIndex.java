package bagward.mould;

/**
 * Mould index without liquid water, 0 to 6: 1 first microscopic growth, 3 visible, 6 all over.
 *
 * <p>Hukka and Viitanen (1999), A mathematical model of mould growth on wooden material, Wood Science and Technology
 * 33:475-485. Read through two public codes; the papers' tables were not read. It cannot reach 1 within a week at any
 * climate a bag has, so it is for bags left on, used bags, ripening pods and drying seed. A living head is not wood: read
 * it as an index. Stepped by the hour; an hour without data leaves index and drying time as they are.
 *
 * @param substrate what it grows on
 */
public record GrowthIndex(Substrate substrate) implements MouldModel {
    /** Our choice: a tenth of first growth is low, first growth moderate, visible growth high. */
    private static final BandLimits BANDS = new BandLimits(0.1, 1, 3);

    private static final double HOURS_OF_EARLY_DECLINE = 6;
    private static final double HOURS_TO_LATE_DECLINE = 24;
    private static final double EARLY_DECLINE_PER_HOUR = 0.00133;
    private static final double LATE_DECLINE_PER_HOUR = 0.000667;

    /**
     * Time to first growth on sawn pine in a constant climate.
     *
     * @param celsius °C, above 0
     * @param percent %RH
     * @return weeks
     */
    public static double weeksToFirstGrowth(double celsius, double percent) {
        return Math.exp(-0.68 * Math.log(celsius) - 13.9 * Math.log(percent) + 66.02);
    }

    /**
     * Time to visible growth on sawn pine in a constant climate.
     *
     * @param celsius °C, above 0
     * @param percent %RH
     * @return weeks
     */
    public static double weeksToVisibleGrowth(double celsius, double percent) {
        return Math.exp(-0.74 * Math.log(celsius) - 12.72 * Math.log(percent) + 61.50);
    }

    /** Intensity of growth on original pine from index 1 on. */
    static double originalLateIntensity(double celsius, double percent) {
        return 2 / (weeksToVisibleGrowth(celsius, percent) / weeksToFirstGrowth(celsius, percent) - 1);
    }

    /** Whether nothing grows and what is there declines. Frozen air does neither. */
    boolean dry(double celsius, double percent) {
        return celsius > 0 && percent < substrate.criticalHumidity(celsius);
    }

    /**
     * The index after a step.
     *
     * @param index before it, 0 to 6
     * @param celsius mean temperature, °C
     * @param percent mean humidity, %RH
     * @param dryHours how long it has been dry when the step ends, h; 0 if it is not
     * @param hours length of the step, h
     */
    public double after(double index, double celsius, double percent, double dryHours, double hours) {
        if (celsius <= 0) {
            return index;
        }
        if (dry(celsius, percent)) {
            return Math.max(0, index - hours * substrate.declineFactor() * declinePerHour(dryHours));
        }
        double rest = Math.max(1 - Math.exp(2.3 * (index - substrate.highestIndex(celsius, percent))), 0);
        double perHour =
                substrate.intensity(index, celsius, percent) * rest / (7 * 24 * weeksToFirstGrowth(celsius, percent));
        return index + hours * perHour;
    }

    private static double declinePerHour(double dryHours) {
        if (dryHours <= HOURS_OF_EARLY_DECLINE) {
            return EARLY_DECLINE_PER_HOUR;
        }
        return dryHours <= HOURS_TO_LATE_DECLINE ? 0 : LATE_DECLINE_PER_HOUR;
    }

    /** The band of the highest index that something has reached. */
    static RiskBand bandOf(IndexState state) {
        return BANDS.bandOf(state.highest());
    }

    @Override
    public BandLimits usualBands() {
        return BANDS;
    }

    String reason(String name, double index) {
        return Say.format("%s: mould index %.2f of 6 (first growth at 1, visible at 3)", name, index);
    }
}
