package bagward.board;

import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.climate.SeriesId;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Readings up to an instant and none after it, so that a board of the past is the one that could have been made then.
 *
 * @param all all readings
 * @param now the last instant that is looked at
 */
record UntilNow(ReadingSource all, Instant now) implements ReadingSource {
    @Override
    public List<Reading> readings(SeriesId series, Instant from, Instant to) {
        Instant afterNow = now.plusMillis(1);
        Instant end = to.isBefore(afterNow) ? to : afterNow;
        return from.isBefore(end) ? all.readings(series, from, end) : List.of();
    }

    @Override
    public Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
        return all.newest(series, atOrBefore.isBefore(now) ? atOrBefore : now);
    }
}
