package bagward.climate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import bagward.fault.ImpossibleValueException;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ResamplerTest {
    private static final Instant START = Instant.parse("2026-04-20T06:00:00Z");
    private static final SeriesId SERIES = new SeriesId(new SensorId("s1"), Quantity.TEMPERATURE);
    private static final Duration MINUTE = Duration.ofMinutes(1);

    @Test
    void a_reading_holds_until_the_next_one() {
        assertCells(4, Duration.ofMinutes(10), List.of(at(0, 20), at(120, 22)), 20, 20, 22, 22);
    }

    @Test
    void a_cell_is_the_mean_over_time_and_not_over_readings() {
        List<Reading> burst = List.of(at(0, 10), at(30, 20), at(40, 20), at(50, 20));
        assertCells(1, MINUTE, burst, 15);
    }

    @Test
    void a_reading_holds_no_longer_than_the_limit() {
        assertCells(5, Duration.ofMinutes(2), List.of(at(0, 20)), 20, 20, Double.NaN, Double.NaN, Double.NaN);
    }

    @Test
    void a_cell_half_covered_has_a_value_and_one_less_covered_is_a_gap() {
        assertCells(2, MINUTE, List.of(at(30, 20)), 20, 20);
        assertCells(2, Duration.ofSeconds(60), List.of(at(31, 20)), Double.NaN, 20);
    }

    @Test
    void a_reading_from_before_the_grid_holds_into_it() {
        assertCells(2, Duration.ofMinutes(2), List.of(at(-60, 20)), 20, Double.NaN);
    }

    @Test
    void readings_after_the_grid_change_nothing() {
        assertCells(1, MINUTE, List.of(at(0, 20), at(60, 99.0 / 3)), 20);
    }

    @Test
    void of_two_readings_of_one_time_the_higher_counts() {
        assertCells(1, MINUTE, List.of(at(0, 21), at(0, 20)), 21);
        assertCells(1, MINUTE, List.of(at(0, 20), at(0, 21)), 21);
    }

    @Test
    void no_readings_are_nothing_but_gaps() {
        assertCells(2, MINUTE, List.of(), Double.NaN, Double.NaN);
    }

    @Test
    void a_hold_limit_of_nothing_is_refused() {
        assertThrows(ImpossibleValueException.class, () -> Resampler.onto(grid(1), List.of(at(0, 20)), Duration.ZERO));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void the_order_of_arrival_changes_nothing(long seed) {
        Random random = new Random(seed);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            readings.add(at(random.nextInt(7200), random.nextInt(30)));
        }
        double[] once =
                Resampler.onto(grid(120), readings, Duration.ofSeconds(45)).toArray();
        Collections.shuffle(readings, random);
        double[] again =
                Resampler.onto(grid(120), readings, Duration.ofSeconds(45)).toArray();
        assertArrayEquals(once, again);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void the_sum_over_all_cells_is_the_sum_over_all_readings(long seed) {
        Random random = new Random(seed);
        List<Reading> readings = new ArrayList<>();
        double expected = 0;
        for (int second = 0; second < 3600; ) {
            int lasts = Math.min(1 + random.nextInt(100), 3600 - second);
            double value = random.nextInt(40);
            readings.add(at(second, value));
            expected += value * lasts;
            second += lasts;
        }
        double sum = 0;
        for (double value :
                Resampler.onto(grid(60), readings, MINUTE.multipliedBy(2)).toArray()) {
            sum += 60 * value;
        }
        assertEquals(expected, sum, 1e-6);
    }

    private static void assertCells(int size, Duration hold, List<Reading> readings, double... expected) {
        assertArrayEquals(expected, Resampler.onto(grid(size), readings, hold).toArray(), 1e-12);
    }

    private static TimeGrid grid(int minutes) {
        return new TimeGrid(START, MINUTE, minutes);
    }

    private static Reading at(int second, double value) {
        return Reading.of(SERIES, START.plusSeconds(second), value);
    }
}
