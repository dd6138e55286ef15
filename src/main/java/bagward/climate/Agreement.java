package bagward.climate;

import bagward.units.Checks;
import bagward.units.Quantity;

/**
 * How far one of several sensors of a place may lie from their median before it counts as an outlier.
 *
 * @param absolute in the unit of the quantity, 0 or more
 * @param relative share of the median that is allowed on top, 0 or more
 */
public record Agreement(double absolute, double relative) {
    /** Refuses negative limits. */
    public Agreement {
        Checks.within("allowed difference", absolute, 0, 10_000, "");
        Checks.within("allowed relative difference", relative, 0, 10, "");
    }

    /**
     * Defaults of ours, no source: 2 °C and 8 %RH, about three times what cheap sensors are off by; light 50 µmol m⁻²
     * s⁻¹ and as much as half of the median, since a beam's shadow falls on one sensor and not on the next. Batteries of
     * several sensors have nothing to agree on.
     */
    public static Agreement usual(Quantity quantity) {
        return switch (quantity) {
            case TEMPERATURE -> new Agreement(2, 0);
            case HUMIDITY -> new Agreement(8, 0);
            case LIGHT -> new Agreement(50, 0.5);
            case BATTERY -> new Agreement(100, 0);
        };
    }

    /** Whether a value lies too far from the median. */
    boolean breaks(double value, double median) {
        return Math.abs(value - median) > absolute + relative * Math.abs(median);
    }
}
