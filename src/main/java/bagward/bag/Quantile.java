package bagward.bag;

import bagward.fault.ImpossibleValueException;
import java.util.Locale;
import java.util.Map;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * A value out of the interval of an estimate: so large a share of what the truth may be lies below it.
 *
 * @param share 0.05 to 0.95
 */
public record Quantile(double share) {
    /** The best value. */
    public static final Quantile MIDDLE = new Quantile(0.5);

    /** A lower estimate: at its limit only if nine of ten possible values are above it. */
    public static final Quantile SURE = new Quantile(0.1);

    /** An upper estimate: at its limit already if one of ten possible values is above it. */
    public static final Quantile POSSIBLE = new Quantile(0.9);

    private static final Map<String, Quantile> WORDS = Map.of("sure", SURE, "middle", MIDDLE, "possible", POSSIBLE);
    private static final double LOWEST = 0.05;
    private static final double HIGHEST = 0.95;

    /** Refuses what lies outside of a 90 % interval: its ends are as far as an estimate is told. */
    public Quantile {
        if (!(share >= LOWEST && share <= HIGHEST)) {
            throw new ImpossibleValueException(rule());
        }
    }

    /** Reads one of the words sure, middle and possible, or a number. */
    public static Quantile read(String text) {
        Quantile named = WORDS.get(text);
        if (named != null) {
            return named;
        }
        try {
            return new Quantile(Double.parseDouble(text));
        } catch (NumberFormatException e) {
            throw new ImpossibleValueException(rule());
        }
    }

    private static String rule() {
        return "must be sure, middle, possible, or a number from " + LOWEST + " to " + HIGHEST;
    }

    /** Whether it is one of the three with a word, for which water on the film is told. */
    public boolean named() {
        return WORDS.containsValue(this);
    }

    /**
     * This quantile of a value whose error is normal to each side.
     *
     * @param low lower end of its interval; NaN stays NaN
     * @param middle best value
     * @param high upper end
     * @param coverage of the interval
     */
    public double within(double low, double middle, double high, Coverage coverage) {
        return within(low, middle, high, reach(coverage));
    }

    /** The same with the reach of a coverage, for many values. */
    double within(double low, double middle, double high, double reach) {
        return middle + Math.abs(reach) * (reach < 0 ? low - middle : high - middle);
    }

    /** How far from the middle to an end of an interval it lies: −1 at the lower end, 1 at the upper one. */
    double reach(Coverage coverage) {
        return equals(MIDDLE)
                ? 0
                : new NormalDistribution().inverseCumulativeProbability(share) / coverage.deviations();
    }

    /** For people: "the best value", "an upper estimate (90 of 100 lie below)". */
    public String words() {
        if (equals(MIDDLE)) {
            return "the best value";
        }
        return (share < MIDDLE.share ? "a lower" : "an upper") + " estimate ("
                + String.format(Locale.ROOT, "%.0f", 100 * share) + " of 100 lie below)";
    }
}
