package bagward.board;

import bagward.bag.BagBelief;
import bagward.bag.BagOutlook;
import bagward.bag.NightOutlook;
import bagward.bag.Outlook;
import bagward.bag.Sky;
import java.util.HashMap;
import java.util.Map;

/**
 * Outlooks of bags, each made once for all bags of a house of which the same is believed. For one station. Safe for use by
 * several threads.
 */
final class BagOutlooks {
    private final Map<Key, BagOutlook> made = new HashMap<>();

    /**
     * The outlook of a bag.
     *
     * @param night the outlook of its house
     * @param belief what is believed of the bag
     * @param sky above the station
     */
    synchronized BagOutlook of(Outlook.Night night, BagBelief belief, Sky sky) {
        return made.computeIfAbsent(new Key(night, belief), key -> NightOutlook.inBag(night, belief, sky));
    }

    private record Key(Outlook.Night night, BagBelief belief) {}
}
