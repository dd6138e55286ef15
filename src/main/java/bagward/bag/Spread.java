package bagward.bag;

import bagward.units.Checks;

/**
 * A parameter with how sure it is: mean and standard deviation, in the parameter's unit.
 *
 * @param mean best value
 * @param deviation standard deviation, 0 or more
 */
public record Spread(double mean, double deviation) {
    /** Refuses NaN and a negative deviation. */
    public Spread {
        Checks.within("mean of a parameter", mean, -1e9, 1e9, "");
        Checks.within("deviation of a parameter", deviation, 0, 1e9, "");
    }
}
