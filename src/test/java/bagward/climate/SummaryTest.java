package bagward.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.fault.ImpossibleValueException;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is kept of a stretch of time. */
class SummaryTest {
    private static final Instant START = Instant.parse("2026-05-04T00:00:00Z");
    private static final SeriesId SERIES = new SeriesId(new SensorId("air-1"), Quantity.TEMPERATURE);
    private static final Duration HOLD = Duration.ofMinutes(3);
    private static final Span HOUR = new Span(START, START.plusSeconds(3600));

    @Test
    void a_mean_is_weighted_by_the_time_for_which_each_value_stood() {
        List<Reading> readings = List.of(at(0, 10), at(120, 20), at(180, 30));
        Summary summary = Summary.over(HOUR, readings, HOLD).orElseThrow();
        // 10 for 120 s, 20 for 60 s, 30 for the hold of 180 s: (1200 + 1200 + 5400) / 360
        assertEquals(21.6667, summary.mean(), 1e-4);
        assertEquals(10, summary.minimum());
        assertEquals(30, summary.maximum());
        assertEquals(3, summary.readings());
        assertEquals(Duration.ofMinutes(6), summary.covered());
        assertEquals(0.1, summary.share(), 1e-12);
    }

    @Test
    void a_value_that_stands_into_a_cell_counts_there_but_was_not_measured_there() {
        List<Summary> cells = Summary.onto(
                new TimeGrid(START, Duration.ofMinutes(10), 2), List.of(at(540, 12)), Duration.ofMinutes(3));
        assertEquals(List.of(1L, 0L), cells.stream().map(Summary::readings).toList());
        assertEquals(
                List.of(Duration.ofMinutes(1), Duration.ofMinutes(2)),
                cells.stream().map(Summary::covered).toList());
    }

    @Test
    void cells_without_anything_known_are_left_out() {
        List<Summary> cells =
                Summary.onto(new TimeGrid(START, Duration.ofMinutes(10), 6), List.of(at(60, 1), at(3_000, 2)), HOLD);
        assertEquals(
                List.of(START, START.plusSeconds(3_000)),
                cells.stream().map(s -> s.span().from()).toList());
    }

    @Test
    void nothing_is_not_summed_up() {
        assertTrue(Summary.over(HOUR, List.of(), HOLD).isEmpty());
        assertThrows(ImpossibleValueException.class, () -> new Summary(HOUR, 0, 1, 1, 1, Duration.ZERO));
    }

    @Test
    void days_on_which_clocks_change_are_as_long_as_they_are() {
        ZoneId zone = ZoneId.of("Europe/Dublin");
        assertEquals(
                Duration.ofHours(23), wholeDay(LocalDate.of(2026, 3, 29), zone).covered());
        assertEquals(
                Duration.ofHours(25), wholeDay(LocalDate.of(2026, 10, 25), zone).covered());
        assertEquals(1, wholeDay(LocalDate.of(2026, 10, 25), zone).share());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void cells_add_up_to_their_day(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Reading> readings = new ArrayList<>();
        for (int second = 0; second < 86_400; second += 1 + random.nextInt(600)) {
            readings.add(at(second, random.nextInt(400) / 10.0));
        }
        Span day = new Span(START, START.plus(Duration.ofDays(1)));
        Summary whole = Summary.over(day, readings, HOLD).orElseThrow();
        List<Summary> cells = Summary.onto(new TimeGrid(START, Duration.ofMinutes(10), 144), readings, HOLD);
        long covered = cells.stream().mapToLong(c -> c.covered().toMillis()).sum();
        double sum = cells.stream()
                .mapToDouble(c -> c.mean() * c.covered().toMillis())
                .sum();
        assertEquals(whole.covered().toMillis(), covered);
        assertEquals(whole.mean(), sum / covered, 1e-9);
        assertEquals(
                whole.readings(), cells.stream().mapToLong(Summary::readings).sum());
        assertEquals(
                whole.minimum(),
                cells.stream().mapToDouble(Summary::minimum).min().orElseThrow());
        assertEquals(
                whole.maximum(),
                cells.stream().mapToDouble(Summary::maximum).max().orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5})
    void means_are_those_of_the_resampler_where_it_has_one(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Reading> readings = new ArrayList<>();
        for (int second = 0; second < 36_000; second += 20 + random.nextInt(200)) {
            readings.add(at(second, random.nextInt(400) / 10.0));
        }
        TimeGrid grid = new TimeGrid(START, Duration.ofMinutes(10), 60);
        RegularSeries series = Resampler.onto(grid, readings, HOLD);
        for (Summary cell : Summary.onto(grid, readings, HOLD)) {
            int i = grid.indexOf(cell.span().from());
            if (series.known(i)) {
                assertEquals(series.valueOrNaN(i), cell.mean(), 1e-9);
            } else {
                assertTrue(cell.share() < 0.5, cell.toString());
            }
        }
    }

    private static Summary wholeDay(LocalDate date, ZoneId zone) {
        Span day = Span.ofDay(date, zone);
        List<Reading> readings = new ArrayList<>();
        for (Instant at = day.from().minusSeconds(60); at.isBefore(day.to()); at = at.plusSeconds(60)) {
            readings.add(Reading.of(SERIES, at, 20));
        }
        return Summary.over(day, readings, HOLD).orElseThrow();
    }

    private static Reading at(int second, double value) {
        return Reading.of(SERIES, START.plusSeconds(second), value);
    }
}
