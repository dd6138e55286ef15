package bagward.site.chart;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Instant;
import java.util.function.IntPredicate;

/**
 * Turns series into path data. Each column of the paper shows the lowest and the highest value that fall on it, so that
 * spikes survive; a column without any value breaks the line.
 */
final class Trace {
    private final Frame frame;
    private final TimeGrid grid;
    private final int first;
    private final int afterLast;
    private final int each;

    Trace(Frame frame, TimeGrid grid) {
        this.frame = frame;
        this.grid = grid;
        this.first = Math.max(0, grid.indexOf(frame.from()));
        this.afterLast = Math.min(grid.size(), grid.indexOf(frame.to()) + 1);
        this.each = frame.cellsPerColumn(grid);
    }

    /** The line of a series where the predicate holds. */
    String line(RegularSeries series, IntPredicate shown) {
        StringBuilder path = new StringBuilder();
        boolean open = false;
        for (int start = first; start < afterLast; start += each) {
            Extremes extremes = extremes(series, shown, start);
            if (!extremes.any()) {
                open = false;
                continue;
            }
            double x = x(start);
            path.append(open ? "L" : "M").append(Frame.point(x, frame.y(extremes.firstMet())));
            if (extremes.low() != extremes.high()) {
                path.append("L").append(Frame.point(x, frame.y(extremes.secondMet())));
            } else if (!open) {
                path.append("h0.01");
            }
            open = true;
        }
        return path.toString();
    }

    /** The area between two series where the predicate holds. */
    String band(RegularSeries low, RegularSeries high, IntPredicate shown) {
        StringBuilder path = new StringBuilder();
        StringBuilder back = new StringBuilder();
        for (int start = first; start < afterLast; start += each) {
            Extremes lower = extremes(low, shown, start);
            Extremes upper = extremes(high, shown, start);
            if (lower.any() && upper.any()) {
                String x = back.isEmpty() ? "M" : "L";
                path.append(x).append(Frame.point(x(start), frame.y(upper.high())));
                back.insert(0, "L" + Frame.point(x(start), frame.y(lower.low())));
            } else if (!back.isEmpty()) {
                path.append(back).append("Z");
                back.setLength(0);
            }
        }
        return back.isEmpty() ? path.toString() : path.append(back).append("Z").toString();
    }

    /** Rectangles over the times at which the predicate holds, as one path from top to bottom. */
    String strips(IntPredicate shown, double top, double bottom) {
        StringBuilder path = new StringBuilder();
        int since = -1;
        for (int i = first; i <= afterLast; i++) {
            boolean holds = i < afterLast && shown.test(i);
            if (holds && since < 0) {
                since = i;
            } else if (!holds && since >= 0) {
                path.append("M").append(Frame.point(frame.x(grid.at(since)), top));
                path.append("H").append(Frame.point(frame.x(grid.at(i)), bottom).replace(" ", "V"));
                path.append("H")
                        .append(Frame.point(frame.x(grid.at(since)), 0).split(" ", 2)[0])
                        .append("Z");
                since = -1;
            }
        }
        return path.toString();
    }

    private double x(int start) {
        Instant middle = grid.at(start).plus(grid.step().multipliedBy(each).dividedBy(2));
        return frame.x(middle);
    }

    private Extremes extremes(RegularSeries series, IntPredicate shown, int start) {
        int lowest = -1;
        int highest = -1;
        for (int i = start; i < Math.min(start + each, afterLast); i++) {
            if (series.known(i) && shown.test(i)) {
                lowest = lowest < 0 || series.valueOrNaN(i) < series.valueOrNaN(lowest) ? i : lowest;
                highest = highest < 0 || series.valueOrNaN(i) > series.valueOrNaN(highest) ? i : highest;
            }
        }
        return lowest < 0
                ? new Extremes(Double.NaN, Double.NaN, true)
                : new Extremes(series.valueOrNaN(lowest), series.valueOrNaN(highest), lowest <= highest);
    }

    private record Extremes(double low, double high, boolean lowFirst) {
        boolean any() {
            return !Double.isNaN(low);
        }

        double firstMet() {
            return lowFirst ? low : high;
        }

        double secondMet() {
            return lowFirst ? high : low;
        }
    }
}
