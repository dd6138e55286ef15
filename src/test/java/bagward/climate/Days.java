package bagward.climate;

import java.time.Duration;
import java.time.Instant;
import java.util.function.DoubleUnaryOperator;

/** Series for tests. */
final class Days {
    static final Instant MIDNIGHT = Instant.parse("2026-04-20T00:00:00Z");
    static final Span DAY = new Span(MIDNIGHT, MIDNIGHT.plus(Duration.ofDays(1)));

    private Days() {}

    /** A day in cells of so many minutes; the function takes the hour at the middle of a cell and may give NaN. */
    static RegularSeries of(int minutes, DoubleUnaryOperator valueAtHour) {
        return hours(24, minutes, valueAtHour);
    }

    /** So many hours from midnight on. */
    static RegularSeries hours(int hours, int minutes, DoubleUnaryOperator valueAtHour) {
        TimeGrid grid = new TimeGrid(MIDNIGHT, Duration.ofMinutes(minutes), hours * 60 / minutes);
        double[] values = new double[grid.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = valueAtHour.applyAsDouble((i + 0.5) * minutes / 60);
        }
        return RegularSeries.of(grid, values);
    }

    /** A series of given cells. */
    static RegularSeries cells(int minutes, double... values) {
        return RegularSeries.of(new TimeGrid(MIDNIGHT, Duration.ofMinutes(minutes), values.length), values);
    }

    static Span hours(double from, double to) {
        return new Span(MIDNIGHT.plusSeconds(Math.round(from * 3600)), MIDNIGHT.plusSeconds(Math.round(to * 3600)));
    }
}
