package bagward.climate;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Readings of another source with corrections applied; the other source keeps the raw values.
 *
 * <p>For each reading the newest correction that holds at its time counts, and only that one: corrections are made from
 * raw readings and do not add up.
 *
 * @param raw the source of raw readings
 * @param corrections of any sensors, in any order
 */
public record CorrectedReadings(ReadingSource raw, List<HumidityCorrection> corrections) implements ReadingSource {
    private static final Comparator<HumidityCorrection> BY_DATE = Comparator.comparing(HumidityCorrection::from)
            .thenComparingDouble(HumidityCorrection::gain)
            .thenComparingDouble(HumidityCorrection::offset);

    /** Copies the list. */
    public CorrectedReadings {
        corrections = List.copyOf(corrections);
    }

    @Override
    public List<Reading> readings(SeriesId series, Instant from, Instant to) {
        List<Reading> readings = raw.readings(series, from, to);
        return untouched(series)
                ? readings
                : readings.stream().map(this::corrected).toList();
    }

    @Override
    public TimedValues values(SeriesId series, Instant from, Instant to) {
        return untouched(series) ? raw.values(series, from, to) : TimedValues.of(readings(series, from, to));
    }

    private boolean untouched(SeriesId series) {
        return corrections.stream().noneMatch(c -> c.sensor().equals(series.sensor()));
    }

    @Override
    public Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
        return raw.newest(series, atOrBefore).map(this::corrected);
    }

    private Reading corrected(Reading reading) {
        return corrections.stream()
                .filter(c -> c.concerns(reading))
                .max(BY_DATE)
                .map(c -> c.applyTo(reading))
                .orElse(reading);
    }
}
