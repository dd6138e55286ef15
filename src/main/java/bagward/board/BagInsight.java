package bagward.board;

import bagward.bag.BagBelief;
import bagward.bag.BagFit;
import bagward.bag.BagOutlook;
import java.util.Optional;

/**
 * What lies behind the numbers of a bag.
 *
 * @param belief what its estimate rests on; empty if its material is no longer configured
 * @param taught what a sensor in this very bag has told; empty if none hung in it
 * @param tonight what is to be expected in it until the next morning; empty without an outlook of its house
 */
public record BagInsight(Optional<BagBelief> belief, Optional<Taught> taught, Optional<BagOutlook> tonight) {
    /** Nothing. */
    public static final BagInsight NONE = new BagInsight(Optional.empty(), Optional.empty(), Optional.empty());

    /** Whether a sensor in this very bag taught what is believed of it. */
    public boolean own() {
        return taught.flatMap(Taught::lesson).isPresent();
    }

    /** How the sensor that hangs in it finds the bag to sit; empty without one. */
    public Optional<BagFit> fit() {
        return taught.flatMap(Taught::fit);
    }
}
