package bagward.store.spool;

import bagward.store.HeardTopic;
import bagward.store.QuarantineStore;
import bagward.store.Quarantined;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * A quarantine that goes on taking messages while the database is away, so that one unusable message does not hold up the
 * readings behind it. Messages that wait are not shown before they are stored; one that is passed on a second time after a
 * crash is counted twice in its row. Safe for use by several threads.
 */
public final class SpooledQuarantine implements QuarantineStore, AutoCloseable {
    private static final Duration PAUSE = Duration.ofSeconds(1);

    private final QuarantineStore store;
    private final SpooledSink<Quarantined> sink;

    private SpooledQuarantine(QuarantineStore store, Spool<Quarantined> spool, Clock clock) {
        this.store = store;
        this.sink = new SpooledSink<>(spool, store::quarantine, clock, PAUSE);
    }

    /**
     * Puts a spool in front of a quarantine, and begins to pass on what an earlier run left in it.
     *
     * @param folder where the spool lies
     * @param limitBytes most bytes of the spool
     * @throws bagward.store.StoreException if the folder cannot be used
     */
    public static SpooledQuarantine open(QuarantineStore store, Path folder, long limitBytes, Clock clock) {
        return new SpooledQuarantine(
                store, Spool.open(Spool.Plan.usual(folder, limitBytes), new QuarantineCodec()), clock);
    }

    @Override
    public void quarantine(List<Quarantined> messages) {
        List<Quarantined> whole = List.copyOf(messages);
        sink.put(whole, () -> {
            store.quarantine(whole);
            return whole.size();
        });
    }

    @Override
    public List<Quarantined> newestQuarantined(int most) {
        return store.newestQuarantined(most);
    }

    @Override
    public long quarantinedCount() {
        return store.quarantinedCount();
    }

    @Override
    public void heard(List<HeardTopic> topics) {
        store.heard(topics);
    }

    @Override
    public List<HeardTopic> heardSince(Instant instant) {
        return store.heardSince(instant);
    }

    /** Stops passing on; what waits stays on disk. The real quarantine is the caller's to close. */
    @Override
    public void close() {
        sink.close();
    }
}
