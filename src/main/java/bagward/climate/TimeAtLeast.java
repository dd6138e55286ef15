package bagward.climate;

import java.time.Duration;
import java.util.function.DoublePredicate;

/**
 * How long something lasted, said honestly: "at least x h, y h unknown". The truth lies between known and known plus
 * unknown.
 *
 * @param known time for which it is known to have been so
 * @param unknown time of which nothing is known
 */
public record TimeAtLeast(Duration known, Duration unknown) {
    /** Time of a span at or above a limit in the unit of the series. */
    public static TimeAtLeast atOrAbove(RegularSeries series, Span span, double limit) {
        return when(series, span, value -> value >= limit);
    }

    /** Time of a span above a limit in the unit of the series. */
    public static TimeAtLeast above(RegularSeries series, Span span, double limit) {
        return when(series, span, value -> value > limit);
    }

    /** Time of a span in which the value of a series meets a condition. */
    public static TimeAtLeast when(RegularSeries series, Span span, DoublePredicate condition) {
        Cells cells = Cells.in(series.grid(), span);
        long count = 0;
        for (int i = cells.first(); i <= cells.last(); i++) {
            if (series.known(i) && condition.test(series.valueOrNaN(i))) {
                count++;
            }
        }
        return new TimeAtLeast(
                series.grid().step().multipliedBy(count),
                Coverage.of(series, span).unknown());
    }

    /** The longest it can have been. */
    public Duration atMost() {
        return known.plus(unknown);
    }
}
