package bagward.board;

import bagward.bag.BagBelief;
import bagward.bag.BagFit;
import bagward.bag.BagOutlook;
import java.util.Optional;

/**
 * What lies behind the numbers of a bag.
 *
 * @param belief what its estimate rests on; empty if its material is no longer configured
 * @param own whether a sensor in this very bag taught it
 * @param fit how the sensor in it finds the bag to sit; empty without one
 * @param tonight what is to be expected in it until the next morning; empty without an outlook of its house
 */
public record BagInsight(Optional<BagBelief> belief, boolean own, Optional<BagFit> fit, Optional<BagOutlook> tonight) {
    /** Nothing. */
    public static final BagInsight NONE = new BagInsight(Optional.empty(), false, Optional.empty(), Optional.empty());
}
