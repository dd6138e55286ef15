package bagward.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.units.Celsius;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StatisticsTest {
    @Test
    void a_day_of_equal_readings_has_that_mean_and_is_whole() {
        Statistics day = fiveMinuteReadings(i -> true);
        assertEquals(20, day.mean());
        assertEquals(1, day.coverage().share());
        assertTrue(day.complete());
    }

    @Test
    void a_day_with_a_little_over_a_quarter_missing_is_provisional() {
        // 73 of 288 readings missing, never more than 1 in a row: 74.65 % known
        Statistics day = fiveMinuteReadings(i -> i % 3 != 0 || i >= 219);
        assertEquals(20, day.mean());
        assertEquals(0.7465, day.coverage().share(), 0.0001);
        assertFalse(day.complete());
        assertTrue(fiveMinuteReadings(i -> i % 3 != 0 || i >= 216).complete());
    }

    @Test
    void six_hours_in_a_row_missing_are_too_many_though_three_quarters_are_known() {
        Statistics whole = statistics(Days.of(60, Math::floor));
        assertEquals(11.5, whole.mean());
        assertTrue(whole.complete());
        Statistics holed = statistics(Days.of(60, hour -> hour > 12 && hour < 18 ? Double.NaN : Math.floor(hour)));
        assertEquals(10.5, holed.mean());
        assertEquals(0.75, holed.coverage().share());
        assertEquals(Duration.ofHours(6), holed.coverage().longestGap());
        assertFalse(holed.complete());
    }

    @ParameterizedTest
    @CsvSource({"1, 0.043", "2, 0.090", "3, 0.138", "4, 0.192", "6, 0.301", "8, 0.415", "12, 0.638"})
    void a_hole_at_the_worst_place_shifts_the_mean_as_worked_out(int hours, double amplitudes) {
        // mean of 24 hourly values of a cosine, as many in a row left out round its peak as it says; by hand
        double from = 12 - (hours + 1) / 2;
        Statistics day = statistics(Days.of(60, hour -> {
            boolean lost = hour > from && hour < from + hours;
            return lost ? Double.NaN : Math.cos(2 * Math.PI * (hour - 12) / 24);
        }));
        assertEquals(amplitudes, -day.mean(), 0.0006);
    }

    @Test
    void extremes_are_those_of_the_known_cells() {
        Statistics day = statistics(Days.of(60, hour -> hour > 20 ? Double.NaN : hour));
        assertEquals(0.5, day.minimum());
        assertEquals(19.5, day.maximum());
    }

    @Test
    void nothing_known_has_no_statistics() {
        assertTrue(Statistics.of(Days.of(60, hour -> Double.NaN), Days.DAY).isEmpty());
    }

    @Test
    void time_outside_the_series_is_unknown() {
        RegularSeries halfDay = Days.hours(12, 60, hour -> 20);
        Coverage coverage = Coverage.of(halfDay, Days.DAY);
        assertEquals(Duration.ofHours(12), coverage.unknown());
        assertEquals(Duration.ofHours(12), coverage.longestGap());
    }

    @Test
    void two_hours_at_ninety_are_two_hours() {
        // 12 cells of 5 minutes at 89.9, 24 at 90.0, 12 at 89.9 %RH: exactly 120 minutes at or above 90
        RegularSeries humidity = Days.hours(4, 5, hour -> hour > 1 && hour < 3 ? 90.0 : 89.9);
        TimeAtLeast time = TimeAtLeast.atOrAbove(humidity, Days.hours(0, 4), 90);
        assertEquals(new TimeAtLeast(Duration.ofHours(2), Duration.ZERO), time);
        assertEquals(
                Duration.ZERO, TimeAtLeast.above(humidity, Days.hours(0, 4), 90).known());
    }

    @Test
    void unknown_hours_are_counted_and_not_filled() {
        RegularSeries humidity = Days.of(5, hour -> hour < 6 ? 95 : hour < 9 ? Double.NaN : 60);
        TimeAtLeast time = TimeAtLeast.atOrAbove(humidity, Days.DAY, 90);
        assertEquals(new TimeAtLeast(Duration.ofHours(6), Duration.ofHours(3)), time);
        assertEquals(Duration.ofHours(9), time.atMost());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void spans_side_by_side_share_no_cell_and_miss_none(long seed) {
        Random random = new Random(seed);
        RegularSeries series = Days.of(5, hour -> random.nextInt(10) == 0 ? Double.NaN : random.nextInt(100));
        double at = 24 * random.nextDouble();
        TimeAtLeast whole = TimeAtLeast.atOrAbove(series, Days.DAY, 50);
        TimeAtLeast before = TimeAtLeast.atOrAbove(series, Days.hours(0, at), 50);
        TimeAtLeast after = TimeAtLeast.atOrAbove(series, Days.hours(at, 24), 50);
        assertEquals(whole.known(), before.known().plus(after.known()));
    }

    @Test
    void degree_days_count_warmth_above_the_base_and_no_cold_below_it() {
        RegularSeries temperature = Days.of(10, hour -> hour < 12 ? 0 : 15);
        DegreeDays days = DegreeDays.of(temperature, Days.DAY, new Celsius(5));
        assertEquals(5, days.sum(), 1e-9);
        assertEquals(Duration.ZERO, days.unknown());
    }

    @Test
    void degree_days_of_a_day_with_a_gap_say_so() {
        RegularSeries temperature = Days.of(10, hour -> hour < 12 ? Double.NaN : 15);
        DegreeDays days = DegreeDays.of(temperature, Days.DAY, new Celsius(5));
        assertEquals(5, days.sum(), 1e-9);
        assertEquals(Duration.ofHours(12), days.unknown());
    }

    private static Statistics fiveMinuteReadings(IntPredicate there) {
        SeriesId series = new SeriesId(new SensorId("s"), Quantity.TEMPERATURE);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < 288; i++) {
            Instant at = Days.MIDNIGHT.plus(Duration.ofMinutes(5L * i));
            if (there.test(i)) {
                readings.add(Reading.of(series, at, 20.0));
            }
        }
        TimeGrid grid = new TimeGrid(Days.MIDNIGHT, Duration.ofMinutes(5), 288);
        return statistics(Resampler.onto(grid, readings, Duration.ofMinutes(5)));
    }

    private static Statistics statistics(RegularSeries series) {
        return Statistics.of(series, Days.DAY).orElseThrow();
    }
}
