package bagward.watch.rehearsal;

import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.climate.SeriesId;
import bagward.climate.SortedReadings;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The readings of a stretch with its run-up, read once and held; what was before it, for loans of long ago, is read when it is wanted. */
final class ReadOnce implements ReadingSource {
    private final ReadingSource stored;
    private final SortedReadings held;
    private final Instant heldFrom;

    ReadOnce(List<SeriesId> series, ReadingSource stored, RehearsedDays days) {
        this.stored = stored;
        this.heldFrom = days.readFrom();
        this.held = SortedReadings.of(series, stored, heldFrom, days.to().plusMillis(1));
    }

    @Override
    public List<Reading> readings(SeriesId series, Instant from, Instant to) {
        return from.isBefore(heldFrom) ? stored.readings(series, from, to) : held.readings(series, from, to);
    }

    @Override
    public Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
        return held.newest(series, atOrBefore);
    }
}
