package bagward.climate;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Readings of a season in memory, found by time; for work that reads the same season again and again. Immutable. */
public final class SortedReadings implements ReadingSource {
    private static final Comparator<Reading> BY_TIME = Comparator.comparing(Reading::measuredAt);

    private final Map<SeriesId, List<Reading>> series = new HashMap<>();

    /** Holds readings in any order, one for each series and time. */
    public SortedReadings(List<Reading> readings) {
        for (Reading reading : readings) {
            series.computeIfAbsent(reading.series(), id -> new ArrayList<>()).add(reading);
        }
        series.replaceAll((id, of) -> of.stream().sorted(BY_TIME).toList());
    }

    /** The readings of some series in [from, to), and the newest one before, which tells of silence. */
    public static SortedReadings of(List<SeriesId> wanted, ReadingSource source, Instant from, Instant to) {
        List<Reading> readings = new ArrayList<>();
        for (SeriesId id : wanted) {
            source.newest(id, from.minusMillis(1)).ifPresent(readings::add);
            readings.addAll(source.readings(id, from, to));
        }
        return new SortedReadings(readings);
    }

    @Override
    public List<Reading> readings(SeriesId id, Instant from, Instant to) {
        List<Reading> all = series.getOrDefault(id, List.of());
        int first = ByTime.firstFrom(all, from);
        return all.subList(first, Math.max(first, ByTime.firstFrom(all, to)));
    }

    @Override
    public Optional<Reading> newest(SeriesId id, Instant atOrBefore) {
        List<Reading> all = series.getOrDefault(id, List.of());
        int after = ByTime.firstFrom(all, atOrBefore.plusMillis(1));
        return after == 0 ? Optional.empty() : Optional.of(all.get(after - 1));
    }
}
