package bagward.site.api;

import bagward.bag.Origin;
import bagward.board.Measure;
import java.time.Instant;
import java.util.Optional;

/**
 * A value in the interface.
 *
 * @param value best value
 * @param low lower end of the 90 % interval
 * @param high upper end
 * @param unit unit of all three
 * @param origin "measured" or "estimated"
 * @param asOf the time it stands for
 */
public record Value(double value, double low, double high, String unit, String origin, Instant asOf) {
    /** The value of a measure; empty where nothing is known. */
    public static Optional<Value> of(Optional<Measure> measure, String unit) {
        return measure.filter(m -> Double.isFinite(m.value()))
                .map(m -> new Value(
                        m.value(), finite(m.low(), m), finite(m.high(), m), unit, word(m.origin()), m.asOf()));
    }

    static String word(Origin origin) {
        return origin == Origin.MEASURED ? "measured" : "estimated";
    }

    private static double finite(double end, Measure measure) {
        return Double.isFinite(end) ? end : measure.value();
    }
}
