package bagward.climate;

import bagward.units.Celsius;
import java.time.Duration;

/**
 * Warmth above a base, summed over time; from the full series, not from daily extremes, so that a cold night after a
 * warm noon counts as it was.
 *
 * @param sum °C d; over the known time only, so the truth is at least this
 * @param unknown time of which nothing is known
 */
public record DegreeDays(double sum, Duration unknown) {
    private static final double SECONDS_OF_DAY = 86_400;

    /** Degree-days of a span: the time integral of the temperature above the base, where it is above. */
    public static DegreeDays of(RegularSeries temperature, Span span, Celsius base) {
        Cells cells = Cells.in(temperature.grid(), span);
        double degrees = 0;
        for (int i = cells.first(); i <= cells.last(); i++) {
            if (temperature.known(i)) {
                degrees += Math.max(0, temperature.valueOrNaN(i) - base.degrees());
            }
        }
        double days = temperature.grid().step().toSeconds() / SECONDS_OF_DAY;
        return new DegreeDays(degrees * days, Coverage.of(temperature, span).unknown());
    }
}
