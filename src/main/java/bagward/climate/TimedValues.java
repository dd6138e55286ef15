package bagward.climate;

import java.util.Comparator;
import java.util.List;

/**
 * Values of one series by time as bare numbers, oldest first, for passes over very many of them. Only what was measured at
 * its time is in it. Of two values of one time the higher stands last. Immutable.
 */
public final class TimedValues {
    private static final Comparator<Reading> BY_TIME_THEN_VALUE =
            Comparator.comparing(Reading::measuredAt).thenComparingDouble(Reading::value);

    private final long[] millis;
    private final double[] values;
    private final int first;
    private final int size;

    /** A part of two arrays that nobody changes any more. */
    TimedValues(long[] millis, double[] values, int first, int size) {
        this.millis = millis;
        this.values = values;
        this.first = first;
        this.size = size;
    }

    /** The values of readings of one series in any order. */
    public static TimedValues of(List<Reading> readings) {
        long[] millis = new long[readings.size()];
        double[] values = new double[readings.size()];
        int size = 0;
        for (Reading reading : readings) {
            if (reading.timeHolds()) {
                millis[size] = reading.measuredAt().toEpochMilli();
                values[size++] = reading.value();
            }
        }
        TimedValues asTheyCame = new TimedValues(millis, values, 0, size);
        return asTheyCame.rising()
                ? asTheyCame
                : of(readings.stream().sorted(BY_TIME_THEN_VALUE).toList());
    }

    private boolean rising() {
        for (int i = 1; i < size; i++) {
            boolean higher = millis[i] == millis[i - 1] && values[i] >= values[i - 1];
            if (millis[i] <= millis[i - 1] && !higher) {
                return false;
            }
        }
        return true;
    }

    /** How many there are. */
    public int size() {
        return size;
    }

    /** When value i was measured, ms since 1970. */
    public long millisAt(int i) {
        return millis[first + i];
    }

    /** Value i, in the unit of the series. */
    public double valueAt(int i) {
        return values[first + i];
    }
}
