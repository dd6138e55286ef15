package bagward.store;

import bagward.climate.Reading;
import bagward.climate.ReadingFlag;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.units.Quantity;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Readings for tests, one a minute since a fixed time. */
public final class Samples {
    /** When the samples begin. */
    public static final Instant START = Instant.parse("2026-05-04T00:00:00Z");

    /** A clock that stands still at the start. */
    public static final Clock CLOCK = Clock.fixed(START, ZoneOffset.UTC);

    /** Humidity of the house sensor. */
    public static final SeriesId AIR_HUMIDITY = new SeriesId(new SensorId("air-1"), Quantity.HUMIDITY);

    /** Temperature of the house sensor. */
    public static final SeriesId AIR_TEMPERATURE = new SeriesId(new SensorId("air-1"), Quantity.TEMPERATURE);

    /** Humidity of the spare sensor. */
    public static final SeriesId LENT_HUMIDITY = new SeriesId(new SensorId("spare-1"), Quantity.HUMIDITY);

    /** All of them. */
    public static final List<SeriesId> SERIES = List.of(AIR_HUMIDITY, AIR_TEMPERATURE, LENT_HUMIDITY);

    private Samples() {}

    /** Some minutes after the start. */
    public static Instant at(long minute) {
        return START.plusSeconds(60 * minute);
    }

    /** A humidity in the house. */
    public static Reading humidity(long minute, double value) {
        return Reading.of(AIR_HUMIDITY, at(minute), value);
    }

    /** A temperature in the house. */
    public static Reading temperature(long minute, double value) {
        return Reading.of(AIR_TEMPERATURE, at(minute), value);
    }

    /** A humidity in a bag. */
    public static Reading lentHumidity(long minute, double value) {
        return Reading.of(LENT_HUMIDITY, at(minute), value);
    }

    /** Humidities of consecutive minutes, the value is a function of the minute. */
    public static List<Reading> minutes(int first, int count) {
        List<Reading> readings = new ArrayList<>();
        for (int i = first; i < first + count; i++) {
            readings.add(humidity(i, i * 7 % 100));
        }
        return readings;
    }

    /** Readings of all series at random minutes with many repeats, contradictions and flags. */
    public static List<Reading> mixed(Random random, int count) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            SeriesId series = SERIES.get(random.nextInt(SERIES.size()));
            Set<ReadingFlag> flags = ReadingFlag.ofBits(random.nextInt(8));
            readings.add(new Reading(series, at(random.nextInt(60)), random.nextInt(4) / 2.0, flags));
        }
        return readings;
    }

    /** The list in consecutive pieces of random length. */
    public static <T> List<List<T>> cut(List<T> whole, Random random) {
        List<List<T>> pieces = new ArrayList<>();
        int from = 0;
        while (from < whole.size()) {
            int to = Math.min(whole.size(), from + 1 + random.nextInt(40));
            pieces.add(whole.subList(from, to));
            from = to;
        }
        return pieces;
    }

    static @Nullable Reading none() {
        return null;
    }
}
