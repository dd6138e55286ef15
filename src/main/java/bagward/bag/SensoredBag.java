package bagward.bag;

import bagward.climate.Climate;
import bagward.fault.ImpossibleValueException;

/**
 * A bag in which a sensor hung: what it said beside what the house was.
 *
 * @param house climate of its bay or house, with light
 * @param measured temperature and humidity by the lent sensor on the same grid; unknown where it was not lent or not
 *     heard
 * @param pairOffset what the lent sensor says more than the house sensor in the same air; see {@link SensorOffset}
 */
public record SensoredBag(Climate house, Climate measured, SensorOffset pairOffset) {
    /** Refuses different grids. */
    public SensoredBag {
        if (!house.grid().equals(measured.grid())) {
            throw new ImpossibleValueException("house and bag must lie on one time grid");
        }
    }

    /** A pair of sensors that never hung side by side. */
    public static SensoredBag of(Climate house, Climate measured) {
        return new SensoredBag(house, measured, SensorOffset.UNKNOWN);
    }
}
