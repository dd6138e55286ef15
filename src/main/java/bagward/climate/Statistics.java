package bagward.climate;

import java.util.Optional;

/**
 * Mean and extremes of a series over a span, usually a civil day ({@link Span#ofDay}).
 *
 * <p>All three are over the known time only. An extreme can be missed by any gap: where the coverage is not whole, the
 * minimum is "at most" and the maximum "at least" the value given.
 *
 * @param mean in the unit of the series
 * @param minimum lowest cell
 * @param maximum highest cell
 * @param coverage what they rest on
 */
public record Statistics(double mean, double minimum, double maximum, Coverage coverage) {
    /** Statistics of a span; empty if nothing in it is known. */
    public static Optional<Statistics> of(RegularSeries series, Span span) {
        Cells cells = Cells.in(series.grid(), span);
        double sum = 0;
        int known = 0;
        double minimum = Double.POSITIVE_INFINITY;
        double maximum = Double.NEGATIVE_INFINITY;
        for (int i = cells.first(); i <= cells.last(); i++) {
            if (series.known(i)) {
                double value = series.valueOrNaN(i);
                sum += value;
                known++;
                minimum = Math.min(minimum, value);
                maximum = Math.max(maximum, value);
            }
        }
        return known == 0
                ? Optional.empty()
                : Optional.of(new Statistics(sum / known, minimum, maximum, Coverage.of(series, span)));
    }

    /** Whether the mean may stand; otherwise it is to be shown as provisional. */
    public boolean complete() {
        return coverage.enoughForMean();
    }
}
