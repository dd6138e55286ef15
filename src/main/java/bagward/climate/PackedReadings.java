package bagward.climate;

import java.time.Instant;
import java.util.AbstractList;
import java.util.List;
import java.util.Optional;
import java.util.RandomAccess;

/** Readings of one series, oldest first, as two arrays of numbers; each reading is made when it is asked for. */
final class PackedReadings extends AbstractList<Reading> implements RandomAccess {
    private final SeriesId id;
    private final long[] millis;
    private final double[] values;

    private PackedReadings(SeriesId id, long[] millis, double[] values) {
        this.id = id;
        this.millis = millis;
        this.values = values;
    }

    /** Packs readings in order of time whose time holds, with one before them. */
    static PackedReadings of(SeriesId id, Optional<Reading> before, List<Reading> readings) {
        List<Reading> first = before.filter(Reading::timeHolds).stream().toList();
        List<Reading> rest = readings.stream().filter(Reading::timeHolds).toList();
        int size = first.size() + rest.size();
        long[] millis = new long[size];
        double[] values = new double[size];
        for (int i = 0; i < size; i++) {
            Reading reading = i < first.size() ? first.get(i) : rest.get(i - first.size());
            millis[i] = reading.measuredAt().toEpochMilli();
            values[i] = reading.value();
        }
        return new PackedReadings(id, millis, values);
    }

    /** Index of the first reading at or after an instant. */
    int firstFrom(Instant instant) {
        int low = 0;
        int high = millis.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (Instant.ofEpochMilli(millis[middle]).isBefore(instant)) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The values in [from, to), without a copy. */
    TimedValues values(Instant from, Instant to) {
        int first = firstFrom(from);
        return new TimedValues(millis, values, first, Math.max(first, firstFrom(to)) - first);
    }

    @Override
    public Reading get(int index) {
        return Reading.of(id, Instant.ofEpochMilli(millis[index]), values[index]);
    }

    @Override
    public int size() {
        return millis.length;
    }
}
