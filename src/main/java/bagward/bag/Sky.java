package bagward.bag;

import java.time.Instant;

/** How much light the sun could give at most; asked only where a house has no light reading. */
@FunctionalInterface
public interface Sky {
    /** Nothing is known of the sun: without light readings the bag climate stays unknown. */
    Sky UNKNOWN = at -> Double.NaN;

    /**
     * Global light outdoors under a clear sky on level ground.
     *
     * @param at when
     * @return W m⁻², 0 at night; NaN if it is not known
     */
    double clearGlobalLight(Instant at);
}
