package bagward.mould;

import bagward.bag.BagClimate;
import bagward.bag.TagCode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * The mould index of a bag itself over all its uses. Between them the index is kept as it was, since nobody knows how the
 * bag was kept; that may be too good or too bad.
 *
 * @param surface what stands for its material
 * @param uses its earlier uses, oldest first
 * @param here its use now
 */
public record UsedBag(Surface surface, List<Use> uses, Use here) {
    /** Copies the list. */
    public UsedBag {
        uses = List.copyOf(uses);
    }

    /**
     * One time on a head.
     *
     * @param head the head
     * @param putOn when it was put on
     * @param takenOff when it came off; for the use now the time it is looked at
     * @param index what the climate inside did to it
     */
    public record Use(TagCode head, Instant putOn, Instant takenOff, IndexStretch index) {}

    /**
     * One time on a head with the climate inside the bag; of more than 21 days the last 21.
     *
     * @param head the head
     * @param putOn when it was put on
     * @param takenOff when it came off; for the use now the time it is looked at
     * @param climate inside
     */
    public record Stretch(TagCode head, Instant putOn, Instant takenOff, BagClimate climate) {}

    /**
     * Goes over the uses of a bag.
     *
     * @param stretches at least one, oldest first; the last one is the use now
     */
    public static UsedBag of(Surface surface, List<Stretch> stretches) {
        List<Use> uses = new ArrayList<>();
        IndexState state = IndexState.CLEAN;
        for (Stretch stretch : stretches) {
            IndexStretch index = IndexStretch.over(
                    surface.substrate(),
                    stretch.climate().temperature().middle(),
                    stretch.climate().humidity().middle(),
                    state);
            uses.add(new Use(stretch.head(), stretch.putOn(), stretch.takenOff(), index));
            state = index.end();
        }
        return new UsedBag(surface, uses.subList(0, uses.size() - 1), uses.get(uses.size() - 1));
    }

    /** Where the index stood when it was put on here. */
    public IndexState before() {
        return uses.isEmpty()
                ? IndexState.CLEAN
                : uses.get(uses.size() - 1).index().end();
    }

    /** The band of the highest index so far: what has grown once is not taken back. */
    public RiskBand band() {
        return GrowthIndex.bandOf(here.index().end());
    }

    /** Whether a new bag should be used instead. */
    public boolean shouldBeReplaced() {
        return band().compareTo(RiskBand.MODERATE) >= 0;
    }
}
