package bagward.site.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class TraceTest {
    private static final Instant START = Instant.parse("2027-05-11T00:00:00Z");

    @Test
    void a_gap_breaks_the_line_and_is_never_bridged() {
        RegularSeries series = series(10, 20, Double.NaN, 30, 40);
        String path = trace(series, 5).line(series, i -> true);
        assertEquals(2, count(path, 'M'), path);
    }

    @Test
    void a_single_value_between_gaps_is_still_seen() {
        RegularSeries series = series(Double.NaN, 20, Double.NaN);
        assertTrue(trace(series, 3).line(series, i -> true).contains("h0.01"));
    }

    @Test
    void a_spike_of_one_minute_survives_thinning() {
        double[] values = new double[1000];
        Arrays.fill(values, 10);
        values[613] = 90;
        RegularSeries series = series(values);
        String path = trace(series, 50).line(series, i -> true);
        assertTrue(path.contains(" 10.0"), "90 of 0 to 100 lies 10 units below the top: " + path);
    }

    @Test
    void measured_and_estimated_parts_make_up_the_whole() {
        RegularSeries series = series(10, 20, 30, 40);
        Trace trace = trace(series, 4);
        String measured = trace.line(series, i -> i < 2);
        String estimated = trace.line(series, i -> i >= 2);
        assertEquals(2, count(measured, 'M') + count(measured, 'L'));
        assertEquals(2, count(estimated, 'M') + count(estimated, 'L'));
    }

    @Test
    void a_band_closes_at_each_gap() {
        RegularSeries low = series(10, 10, Double.NaN, 10);
        RegularSeries high = series(20, 20, Double.NaN, 20);
        assertEquals(2, count(trace(low, 4).band(low, high, i -> true), 'Z'));
    }

    @Test
    void a_strip_covers_the_cells_where_it_holds() {
        RegularSeries series = series(0, 0, 0, 0);
        assertEquals("M1.0 5.0H3.0V9.0H1.0Z", trace(series, 4).strips(i -> i == 1 || i == 2, 5, 9));
    }

    @Test
    void a_day_line_keeps_gaps_too() {
        DayLine line = DayLine.of(List.of(1.0, Double.NaN, 3.0), 30, 10);
        assertEquals(2, count(line.path(), 'M'));
        assertEquals(25, line.lastX());
    }

    private static Trace trace(RegularSeries series, double width) {
        Frame frame = new Frame(0, 0, width, 100, START, series.grid().end(), 0, 100);
        return new Trace(frame, series.grid());
    }

    private static RegularSeries series(double... values) {
        return RegularSeries.of(new TimeGrid(START, Duration.ofMinutes(1), values.length), values);
    }

    private static long count(String path, char letter) {
        return path.chars().filter(c -> c == letter).count();
    }
}
