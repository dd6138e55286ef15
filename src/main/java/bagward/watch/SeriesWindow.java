package bagward.watch;

import bagward.climate.ByTime;
import bagward.climate.Reading;
import bagward.store.ReadingStore;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The newest readings of one series in memory, sorted by time. Safe for use by several threads. */
final class SeriesWindow {
    private final List<Reading> readings = new ArrayList<>();

    /** Adds a reading, wherever it belongs. */
    synchronized void add(Reading reading) {
        int place = firstFrom(reading.measuredAt());
        if (place < readings.size() && readings.get(place).measuredAt().equals(reading.measuredAt())) {
            readings.set(place, ReadingStore.kept(readings.get(place), reading));
        } else {
            readings.add(place, reading);
        }
    }

    /** Readings in [from, to). */
    synchronized List<Reading> between(Instant from, Instant to) {
        int first = firstFrom(from);
        return List.copyOf(readings.subList(first, Math.max(first, firstFrom(to))));
    }

    /** The newest reading at or before an instant. */
    synchronized Optional<Reading> newest(Instant atOrBefore) {
        int place = firstFrom(atOrBefore);
        if (place < readings.size() && readings.get(place).measuredAt().equals(atOrBefore)) {
            return Optional.of(readings.get(place));
        }
        return place == 0 ? Optional.empty() : Optional.of(readings.get(place - 1));
    }

    /** Forgets what is older than an instant, but for the newest of that: it tells when the sensor was last heard. */
    synchronized void forgetBefore(Instant start) {
        int older = firstFrom(start) - 1;
        if (older > 0) {
            readings.subList(0, older).clear();
        }
    }

    private int firstFrom(Instant instant) {
        return ByTime.firstFrom(readings, instant);
    }
}
