package bagward.mould;

import bagward.fault.ImpossibleValueException;
import java.time.Duration;

/**
 * In-bag temperatures that hurt pollen and ovules.
 *
 * @param watchCelsius above this: watch, °C
 * @param heatCelsius above this for {@code heatFor}: heat, °C
 * @param heatFor how long it must be that hot without a break
 * @param lossCelsius above this at any time: loss of pollen is likely, °C
 * @param source where the limits come from
 */
public record HeatLimits(double watchCelsius, double heatCelsius, Duration heatFor, double lossCelsius, String source) {
    /** Refuses limits out of order. */
    public HeatLimits {
        if (!(watchCelsius <= heatCelsius && heatCelsius <= lossCelsius)) {
            throw new ImpossibleValueException("heat limits " + watchCelsius + ", " + heatCelsius + ", " + lossCelsius
                    + " °C are impossible: watch, heat and loss must not fall");
        }
    }
}
