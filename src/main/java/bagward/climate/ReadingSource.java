package bagward.climate;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Where readings can be read from: a store, a window in memory, or a list in a test. */
public interface ReadingSource {
    /** Readings of a series in [from, to), oldest first, one for each time. */
    List<Reading> readings(SeriesId series, Instant from, Instant to);

    /** The values of the readings in [from, to) whose time holds. */
    default TimedValues values(SeriesId series, Instant from, Instant to) {
        return TimedValues.of(readings(series, from, to));
    }

    /** The newest reading of a series at or before an instant. */
    Optional<Reading> newest(SeriesId series, Instant atOrBefore);
}
