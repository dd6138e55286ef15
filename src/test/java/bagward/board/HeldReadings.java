package bagward.board;

import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.climate.SeriesId;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/** Readings in memory by series and time; of two for one time the higher counts, as in the store. */
public final class HeldReadings implements ReadingSource {
    private final Map<SeriesId, NavigableMap<Instant, Reading>> bySeries = new HashMap<>();

    /** Takes readings in the order in which they come. */
    public HeldReadings take(Collection<Reading> readings) {
        for (Reading reading : readings) {
            bySeries.computeIfAbsent(reading.series(), s -> new TreeMap<>())
                    .merge(reading.measuredAt(), reading, (a, b) -> a.value() >= b.value() ? a : b);
        }
        return this;
    }

    @Override
    public List<Reading> readings(SeriesId series, Instant from, Instant to) {
        NavigableMap<Instant, Reading> of = bySeries.get(series);
        return of == null
                ? List.of()
                : List.copyOf(of.subMap(from, true, to, false).values());
    }

    @Override
    public Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
        return Optional.ofNullable(bySeries.get(series))
                .flatMap(of -> Optional.ofNullable(of.floorEntry(atOrBefore)))
                .map(Map.Entry::getValue);
    }
}
