package bagward.units;

import bagward.fault.ImpossibleValueException;

/** Guards that the value types share. */
public final class Checks {
    private Checks() {}

    /**
     * Refuses a value that is not finite or lies outside the closed range.
     *
     * @param name what is measured; only the message turns it into words
     * @param value the value
     * @param low lowest allowed value
     * @param high highest allowed value
     * @param unit unit of all three
     * @return the value
     * @throws ImpossibleValueException if it is NaN, infinite or outside
     */
    public static double within(Object name, double value, double low, double high, String unit) {
        if (!Double.isFinite(value) || value < low || value > high) {
            throw new ImpossibleValueException(name + " of " + value + " " + unit + " is impossible: allowed is " + low
                    + " to " + high + " " + unit);
        }
        return value;
    }
}
