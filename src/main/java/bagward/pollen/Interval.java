package bagward.pollen;

/**
 * An interval for an estimate.
 *
 * @param low lower end
 * @param high upper end
 * @param level nominal share of such intervals that hold the true value, 0 to 1
 */
public record Interval(double low, double high, double level) {
    /** Whether a value lies inside, ends included. */
    public boolean holds(double value) {
        return low <= value && value <= high;
    }
}
