package bagward.store;

import bagward.climate.SaltCheck;
import java.time.Instant;
import java.util.List;

/** Checks of humidity sensors over salts; never edited, only added to and withdrawn. Safe for use by several threads. */
public interface SensorCheckStore {
    /**
     * Adds a check.
     *
     * @param by who entered it
     * @param recordedAt when it was entered
     * @throws StoreException if it could not be stored
     */
    void add(SaltCheck check, String by, Instant recordedAt);

    /**
     * Withdraws a check.
     *
     * @param id number of the check
     * @param withdrawal when, who and why
     * @return whether there was such a check that still counted
     * @throws StoreException if it could not be stored
     */
    boolean withdraw(long id, KeptCheck.Withdrawal withdrawal);

    /** Every check in the order of entry, with those that were withdrawn. */
    List<KeptCheck> checks();
}
