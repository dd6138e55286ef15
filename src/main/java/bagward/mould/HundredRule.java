package bagward.mould;

/**
 * An old rule of thumb for keeping seed: relative humidity in % and temperature in °F together at most 100 (as read by
 * others). It is about months of storage, not about days of drying.
 */
public final class HundredRule {
    /** The sum that is not to be passed. */
    public static final double LIMIT = 100;

    private HundredRule() {}

    /**
     * Humidity and temperature added up.
     *
     * @param celsius °C
     * @param percent %RH
     */
    public static double sum(double celsius, double percent) {
        return percent + celsius * 1.8 + 32;
    }

    /** Whether such air keeps the rule. */
    public static boolean keeps(double celsius, double percent) {
        return sum(celsius, percent) <= LIMIT;
    }
}
