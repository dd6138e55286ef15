package bagward.store;

import bagward.pollen.PollenEntry;
import java.time.Instant;
import java.util.List;

/** The journal of pollen scores; never edited, only added to. */
public interface PollenStore {
    /**
     * Adds entries, all or none.
     *
     * @param recordedAt when they were entered
     * @throws StoreException if they could not be stored; none of them is
     */
    void append(List<PollenEntry> entries, Instant recordedAt);

    /** Every entry in the order of entry. */
    List<PollenEntry> entries();
}
