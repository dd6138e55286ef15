package bagward.board;

import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.climate.SeriesId;
import bagward.climate.TimedValues;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Readings up to an instant and none after it, so that a board of the past is the one that could have been made then; and
 * none whose time is known to be wrong.
 *
 * @param all all readings
 * @param now the last instant that is looked at
 */
record UntilNow(ReadingSource all, Instant now) implements ReadingSource {
    @Override
    public List<Reading> readings(SeriesId series, Instant from, Instant to) {
        Instant end = end(to);
        return from.isBefore(end) ? sound(all.readings(series, from, end)) : List.of();
    }

    @Override
    public TimedValues values(SeriesId series, Instant from, Instant to) {
        Instant end = end(to);
        return from.isBefore(end) ? all.values(series, from, end) : TimedValues.of(List.of());
    }

    private Instant end(Instant to) {
        Instant afterNow = now.plusMillis(1);
        return to.isBefore(afterNow) ? to : afterNow;
    }

    @Override
    public Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
        Optional<Reading> newest = all.newest(series, atOrBefore.isBefore(now) ? atOrBefore : now);
        while (newest.isPresent() && !newest.get().timeHolds()) {
            newest = all.newest(series, newest.get().measuredAt().minusMillis(1));
        }
        return newest;
    }

    private static List<Reading> sound(List<Reading> readings) {
        // Hardly ever is one of them unsound, and then the list need not be copied.
        return readings.stream().allMatch(Reading::timeHolds)
                ? readings
                : readings.stream().filter(Reading::timeHolds).toList();
    }
}
