package bagward.watch;

import bagward.climate.Reading;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Readings of one series, sorted by time; almost all come in order and are added at the end. */
final class WindowSeries {
    private final List<Reading> readings = new ArrayList<>();

    /** Adds a reading; of two at one time the higher one stays, as in the store. */
    synchronized void put(Reading reading) {
        int place = firstFrom(reading.measuredAt());
        if (place < readings.size() && readings.get(place).measuredAt().equals(reading.measuredAt())) {
            if (reading.value() > readings.get(place).value()) {
                readings.set(place, reading);
            }
        } else {
            readings.add(place, reading);
        }
    }

    /** Readings in [from, to), oldest first; a copy. */
    synchronized List<Reading> between(Instant from, Instant to) {
        int first = firstFrom(from);
        return List.copyOf(readings.subList(first, Math.max(first, firstFrom(to))));
    }

    /** The newest reading at or before an instant. */
    synchronized Optional<Reading> newest(Instant atOrBefore) {
        int after = firstFrom(atOrBefore.plusNanos(1));
        return after == 0 ? Optional.empty() : Optional.of(readings.get(after - 1));
    }

    /** Forgets readings before an instant. */
    synchronized void forgetBefore(Instant instant) {
        readings.subList(0, firstFrom(instant)).clear();
    }

    private int firstFrom(Instant instant) {
        int last = readings.size() - 1;
        if (last < 0 || readings.get(last).measuredAt().isBefore(instant)) {
            return readings.size();
        }
        int low = 0;
        int high = last;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (readings.get(middle).measuredAt().isBefore(instant)) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
