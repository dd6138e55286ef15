package bagward.climate;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Readings of a season in memory, found by time; for work that reads the same season again and again. Sixteen bytes a
 * reading; what is marked as measured at a wrong time is left out. Immutable.
 */
public final class SortedReadings implements ReadingSource {
    private final Map<SeriesId, PackedReadings> series = new HashMap<>();

    private SortedReadings() {}

    /** The readings of some series in [from, to), and the newest one before, which tells of silence. */
    public static SortedReadings of(List<SeriesId> wanted, ReadingSource source, Instant from, Instant to) {
        SortedReadings sorted = new SortedReadings();
        for (SeriesId id : wanted) {
            Optional<Reading> before = source.newest(id, from.minusMillis(1));
            sorted.series.put(id, PackedReadings.of(id, before, source.readings(id, from, to)));
        }
        return sorted;
    }

    @Override
    public List<Reading> readings(SeriesId id, Instant from, Instant to) {
        PackedReadings all = series.get(id);
        if (all == null) {
            return List.of();
        }
        int first = all.firstFrom(from);
        return all.subList(first, Math.max(first, all.firstFrom(to)));
    }

    @Override
    public TimedValues values(SeriesId id, Instant from, Instant to) {
        PackedReadings all = series.get(id);
        return all == null ? TimedValues.of(List.of()) : all.values(from, to);
    }

    @Override
    public Optional<Reading> newest(SeriesId id, Instant atOrBefore) {
        PackedReadings all = series.get(id);
        int after = all == null ? 0 : all.firstFrom(atOrBefore.plusMillis(1));
        return all == null || after == 0 ? Optional.empty() : Optional.of(all.get(after - 1));
    }
}
