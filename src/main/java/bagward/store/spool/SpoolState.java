package bagward.store.spool;

import bagward.store.ReadingStore.Receipt;
import java.time.Instant;
import java.util.Optional;

/**
 * How a store behind a spool is.
 *
 * @param awaySince since when the store takes nothing; empty if it does
 * @param why what the store said last while it was away
 * @param depth how much waits
 * @param passedOn what became of the readings that had to wait, since the start
 */
public record SpoolState(Optional<Instant> awaySince, String why, Depth depth, Receipt passedOn) {
    /** One sentence. */
    public String says() {
        if (awaySince.isPresent()) {
            return "The store is away since " + awaySince.get() + "; " + waiting() + ". It says: " + why;
        }
        return depth.items() > 0
                ? "The store is back, and is being given what waited: " + waiting()
                : "The store takes readings; nothing waits in the spool.";
    }

    private String waiting() {
        return depth.items() + " wait in the spool (" + Math.round(depth.percent()) + " % of "
                + (depth.limitBytes() >> 20) + " MB)"
                + (depth.damagedBytes() > 0 ? ", " + depth.damagedBytes() + " damaged bytes set aside" : "");
    }
}
