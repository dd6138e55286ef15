package bagward.site.chart;

import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;

/**
 * Where a panel lies on the paper and which times and values it spans.
 *
 * @param left of the plot, units
 * @param top of the plot, units
 * @param width of the plot, units
 * @param height of the plot, units
 * @param from first instant
 * @param to last instant
 * @param low value at the lower edge
 * @param high value at the upper edge
 */
public record Frame(
        double left, double top, double width, double height, Instant from, Instant to, double low, double high) {
    double x(Instant at) {
        double share = Duration.between(from, at).toSeconds()
                / (double) Math.max(1, Duration.between(from, to).toSeconds());
        return left + width * Math.min(1, Math.max(0, share));
    }

    double y(double value) {
        double share = (value - low) / (high - low);
        return top + height * (1 - Math.min(1, Math.max(0, share)));
    }

    /** Lower edge of the plot. */
    public double bottom() {
        return top + height;
    }

    /** Right edge of the plot. */
    public double right() {
        return left + width;
    }

    /** How many cells of a grid share one unit of width, at least one. */
    int cellsPerColumn(TimeGrid grid) {
        double cells =
                Duration.between(from, to).toSeconds() / (double) grid.step().toSeconds();
        return (int) Math.max(1, Math.round(cells / width));
    }

    static String point(double x, double y) {
        return String.format(Locale.ROOT, "%.1f %.1f", x, y);
    }
}
