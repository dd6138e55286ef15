package bagward.site.chart;

import java.util.List;
import java.util.Locale;

/**
 * A line the size of a word: the last day without axes. Gaps stay gaps.
 *
 * @param path SVG path data; empty if nothing is known
 * @param lastX where the newest known value lies
 * @param lastY where the newest known value lies
 */
public record DayLine(String path, double lastX, double lastY) {
    /** Spans less than this are drawn as flat as they are. */
    private static final double SMALLEST_SPAN = 4;

    /** The line of equal steps, oldest first, NaN for gaps, in a box with its origin at the top left. */
    public static DayLine of(List<Double> values, double width, double height) {
        double low = values.stream()
                .mapToDouble(v -> v)
                .filter(Double::isFinite)
                .min()
                .orElse(0);
        double high = values.stream()
                .mapToDouble(v -> v)
                .filter(Double::isFinite)
                .max()
                .orElse(0);
        double span = Math.max(SMALLEST_SPAN, high - low);
        double floor = (low + high - span) / 2;
        StringBuilder path = new StringBuilder();
        double lastX = Double.NaN;
        double lastY = Double.NaN;
        boolean open = false;
        for (int i = 0; i < values.size(); i++) {
            double value = values.get(i);
            if (!Double.isFinite(value)) {
                open = false;
                continue;
            }
            lastX = width * (i + 0.5) / values.size();
            lastY = height * (1 - (value - floor) / span);
            path.append(open ? "L" : "M").append(point(lastX, lastY));
            if (!open) {
                path.append("h0.01");
            }
            open = true;
        }
        return new DayLine(path.toString(), lastX, lastY);
    }

    /** Whether anything is known. */
    public boolean known() {
        return !path.isEmpty();
    }

    private static String point(double x, double y) {
        return String.format(Locale.ROOT, "%.1f %.1f", x, y);
    }
}
