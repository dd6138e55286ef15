package bagward.store;

import bagward.bag.RegisterChange;
import java.time.Instant;
import java.util.List;

/** The journal of register changes; never edited, only added to. */
public interface RegisterStore {
    /**
     * Adds changes, all or none.
     *
     * @param changes what was done, already checked against the register's rules
     * @param by who entered it
     * @param recordedAt when it was entered
     * @throws StoreException if they could not be stored; none of them is
     */
    void append(List<RegisterChange> changes, String by, Instant recordedAt);

    /** Every change in the order of entry. */
    List<RegisterChange> changes();
}
