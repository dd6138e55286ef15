package bagward.store;

import java.time.Instant;
import java.util.List;

/** Messages that could not be used, and topics that nobody configured. */
public interface QuarantineStore {
    /**
     * Keeps messages. When it returns they are on disk.
     *
     * @throws StoreException if they could not be stored; none of them is
     */
    void quarantine(List<Quarantined> messages);

    /** The newest ones, newest first. */
    List<Quarantined> newestQuarantined(int most);

    /** How many there are. */
    long quarantinedCount();

    /** Counts messages on topics that are not configured, and keeps the newest sample of each. */
    void heard(List<HeardTopic> topics);

    /** Topics that were heard since an instant, by name. */
    List<HeardTopic> heardSince(Instant instant);
}
