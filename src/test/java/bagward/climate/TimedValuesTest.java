package bagward.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.units.Quantity;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TimedValuesTest {
    private static final Instant START = Instant.parse("2026-04-20T06:00:00Z");
    private static final SeriesId SERIES = new SeriesId(new SensorId("s1"), Quantity.TEMPERATURE);

    @Test
    void stand_in_the_order_of_time_in_whatever_order_readings_came() {
        List<Reading> readings = readings();
        List<String> inOrder = words(TimedValues.of(readings));
        Collections.shuffle(readings, new Random(3));
        assertEquals(inOrder, words(TimedValues.of(readings)));
    }

    @Test
    void of_two_of_one_time_the_higher_stands_last() {
        List<Reading> two = List.of(Reading.of(SERIES, START, 21), Reading.of(SERIES, START, 20));
        assertEquals(List.of(START + " 20.0", START + " 21.0"), words(TimedValues.of(two)));
    }

    @Test
    void what_was_measured_at_a_wrong_time_is_left_out() {
        List<Reading> readings = readings();
        List<String> all = words(TimedValues.of(readings));
        readings.set(7, readings.get(7).with(ReadingFlag.CLOCK_WRONG));
        all.remove(7);
        assertEquals(all, words(TimedValues.of(readings)));
    }

    @Test
    void packed_readings_say_the_same_as_a_list_of_them() {
        List<Reading> readings = readings();
        SortedReadings packed =
                SortedReadings.of(List.of(SERIES), new FixedReadings(readings), START, START.plusSeconds(9_000));
        for (int from = 0; from < 100; from += 7) {
            Instant first = START.plusSeconds(60L * from + 1);
            Instant end = first.plusSeconds(1_200);
            assertEquals(
                    words(TimedValues.of(packed.readings(SERIES, first, end))),
                    words(packed.values(SERIES, first, end)));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"s1", "s2"})
    void a_source_with_corrections_gives_the_values_of_its_readings(String corrected) {
        SeriesId humidity = new SeriesId(SERIES.sensor(), Quantity.HUMIDITY);
        FixedReadings raw = new FixedReadings(readings().stream()
                .map(r -> Reading.of(humidity, r.measuredAt(), r.value()))
                .toList());
        HumidityCorrection correction = new HumidityCorrection(new SensorId(corrected), START, 1.1, 2);
        CorrectedReadings source = new CorrectedReadings(raw, List.of(correction));
        Instant end = START.plusSeconds(600);
        assertEquals(
                words(TimedValues.of(source.readings(humidity, START, end))),
                words(source.values(humidity, START, end)));
    }

    private static List<Reading> readings() {
        Random random = new Random(1);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            readings.add(Reading.of(SERIES, START.plusSeconds(60L * i), 20 + random.nextGaussian()));
        }
        return readings;
    }

    private static List<String> words(TimedValues values) {
        return new ArrayList<>(IntStream.range(0, values.size())
                .mapToObj(i -> Instant.ofEpochMilli(values.millisAt(i)) + " " + values.valueAt(i))
                .toList());
    }
}
