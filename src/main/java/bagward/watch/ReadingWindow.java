package bagward.watch;

import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.climate.SeriesId;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The readings of the last weeks in memory, since every tick reads them all. It answers as the store does, whatever the
 * order in which readings came; what lies before it is read from the store. Safe for use by several threads.
 */
final class ReadingWindow implements ReadingSource {
    private static final Duration LONG_AFTER = Duration.ofDays(36_500);

    private final ReadingSource store;
    private final Map<SeriesId, WindowSeries> series = new ConcurrentHashMap<>();
    private volatile Instant begins;

    /** A window from an instant on, still without readings. */
    ReadingWindow(ReadingSource store, Instant begins) {
        this.store = store;
        this.begins = begins;
    }

    /** Takes in what the store has of a series since the window begins. */
    void load(SeriesId id) {
        store.readings(id, begins, begins.plus(LONG_AFTER)).forEach(this::put);
    }

    /** Takes in readings that were stored; those before the window are left to the store. */
    void stored(List<Reading> readings) {
        readings.forEach(this::put);
    }

    /** Moves the beginning of the window on, and forgets what lies before it. */
    void beginAt(Instant later) {
        if (later.isAfter(begins)) {
            begins = later;
            series.values().forEach(s -> s.forgetBefore(later));
        }
    }

    @Override
    public List<Reading> readings(SeriesId id, Instant from, Instant to) {
        if (from.isBefore(begins)) {
            return store.readings(id, from, to);
        }
        WindowSeries known = series.get(id);
        return known == null ? List.of() : known.between(from, to);
    }

    @Override
    public Optional<Reading> newest(SeriesId id, Instant atOrBefore) {
        WindowSeries known = series.get(id);
        Optional<Reading> inWindow = known == null ? Optional.empty() : known.newest(atOrBefore);
        return inWindow.isPresent() ? inWindow : store.newest(id, atOrBefore);
    }

    private void put(Reading reading) {
        if (!reading.measuredAt().isBefore(begins)) {
            series.computeIfAbsent(reading.series(), id -> new WindowSeries()).put(reading);
        }
    }
}
