package bagward.store.spool;

import bagward.climate.Reading;
import bagward.climate.SeriesId;
import bagward.store.ReadingStore;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A store of readings that goes on taking them while the real one is away: they wait in a bounded spool on disk and are
 * stored in order when it is back. Readings that wait are found as if they were stored. Safe for use by several threads.
 *
 * <p>Of readings that wait, {@link #append} cannot say yet whether they are new: its receipt counts none, and
 * {@link SpoolState#passedOn} counts them later.
 */
public final class SpooledReadings implements ReadingStore, AutoCloseable {
    private static final Duration PAUSE = Duration.ofSeconds(1);

    private final ReadingStore store;
    private final SpooledSink<Reading> sink;
    private volatile Receipt passedOn = new Receipt(0, 0, 0);

    private SpooledReadings(ReadingStore store, Spool<Reading> spool, Clock clock, Duration pause) {
        this.store = store;
        this.sink = new SpooledSink<>(spool, this::passOn, clock, pause);
    }

    /**
     * Puts a spool in front of a store, and begins to pass on what an earlier run left in it.
     *
     * @param folder where the spool lies
     * @param limitBytes most bytes of the spool
     * @throws bagward.store.StoreException if the folder cannot be used
     */
    public static SpooledReadings open(ReadingStore store, Path folder, long limitBytes, Clock clock) {
        return open(store, Spool.Plan.usual(folder, limitBytes), clock, PAUSE);
    }

    static SpooledReadings open(ReadingStore store, Spool.Plan plan, Clock clock, Duration pause) {
        return new SpooledReadings(store, Spool.open(plan, new ReadingCodec()), clock, pause);
    }

    @Override
    public Receipt append(List<Reading> batch) {
        List<Reading> whole = List.copyOf(batch);
        if (whole.isEmpty()) {
            return new Receipt(0, 0, 0);
        }
        return sink.put(whole, () -> store.append(whole)).orElse(new Receipt(0, 0, 0));
    }

    /** Called by one thread. */
    private void passOn(List<Reading> batch) {
        Receipt receipt = store.append(batch);
        Receipt before = passedOn;
        passedOn = new Receipt(
                before.stored() + receipt.stored(),
                before.repeated() + receipt.repeated(),
                before.contradicted() + receipt.contradicted());
    }

    @Override
    public List<Reading> readings(SeriesId series, Instant from, Instant to) {
        // First what waits, then the store: what is passed on between the two is seen twice rather than not at all.
        List<Reading> waiting = waiting(series)
                .filter(r -> !r.measuredAt().isBefore(from) && r.measuredAt().isBefore(to))
                .toList();
        List<Reading> stored = store.readings(series, from, to);
        return waiting.isEmpty() ? stored : merged(waiting, stored);
    }

    @Override
    public Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
        List<Reading> waiting =
                waiting(series).filter(r -> !r.measuredAt().isAfter(atOrBefore)).toList();
        Optional<Reading> stored = store.newest(series, atOrBefore);
        List<Reading> all = merged(waiting, stored.stream().toList());
        return all.isEmpty() ? stored : Optional.of(all.get(all.size() - 1));
    }

    /** Deletes from the store; what waits is stored first and goes another time. */
    @Override
    public int deleteBefore(Instant before, int most) {
        return store.deleteBefore(before, most);
    }

    private Stream<Reading> waiting(SeriesId series) {
        return sink.waiting().stream().filter(r -> r.series().equals(series));
    }

    private static List<Reading> merged(List<Reading> some, List<Reading> others) {
        TreeMap<Instant, Reading> byTime = new TreeMap<>();
        Stream.concat(some.stream(), others.stream()).forEach(r -> byTime.merge(r.measuredAt(), r, ReadingStore::kept));
        return new ArrayList<>(byTime.values());
    }

    /** How it is. */
    public SpoolState state() {
        Optional<SpooledSink.Outage> outage = sink.outage();
        return new SpoolState(
                outage.map(SpooledSink.Outage::since),
                outage.map(SpooledSink.Outage::why).orElse(""),
                sink.depth(),
                passedOn);
    }

    /** Stops passing on; what waits stays on disk. The real store is the caller's to close. */
    @Override
    public void close() {
        sink.close();
    }
}
