package bagward.climate;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Readings of a list, as a source; for tests of any room. */
public record FixedReadings(List<Reading> all) implements ReadingSource {
    private static final Comparator<Reading> BY_TIME = Comparator.comparing(Reading::measuredAt);

    /** Copies the list. */
    public FixedReadings {
        all = List.copyOf(all);
    }

    @Override
    public List<Reading> readings(SeriesId series, Instant from, Instant to) {
        Span span = new Span(from, to);
        return all.stream()
                .filter(r -> r.series().equals(series) && span.holds(r.measuredAt()))
                .sorted(BY_TIME)
                .toList();
    }

    @Override
    public Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
        return all.stream()
                .filter(r -> r.series().equals(series) && !r.measuredAt().isAfter(atOrBefore))
                .max(BY_TIME);
    }
}
