package bagward.alarm;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A time for which a value was at or above a limit: a {@link Spell} above, seen as a whole.
 *
 * @param from first instant
 * @param to first instant after it
 */
public record HeldSpan(Instant from, Instant to) {
    /**
     * The spans of a series within [from, to), in order. Those that begin before or last longer are cut there.
     *
     * @param limit in the unit of the series
     * @param deadband in the unit of the series, 0 or more
     */
    public static List<HeldSpan> within(RegularSeries series, double limit, double deadband, Instant from, Instant to) {
        TimeGrid grid = series.grid();
        int first = Math.max(0, Math.min(grid.size(), grid.indexOf(from)));
        int end = Math.max(first, Math.min(grid.size(), grid.indexOf(to.minusMillis(1)) + 1));
        List<HeldSpan> spans = new ArrayList<>();
        boolean above = Spell.above(series, first - 1, limit, deadband);
        Instant began = from;
        for (int i = first; i < end; i++) {
            double value = series.valueOrNaN(i);
            if (!above && value >= limit) {
                above = true;
                began = later(grid.at(i), from);
            } else if (above && value < limit - deadband) {
                above = false;
                add(spans, began, grid.at(i));
            }
        }
        if (above) {
            add(spans, began, to);
        }
        return spans;
    }

    private static void add(List<HeldSpan> spans, Instant from, Instant to) {
        if (from.isBefore(to)) {
            spans.add(new HeldSpan(from, to));
        }
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    /** How many of some spans there were at once at most. */
    public static int mostAtOnce(List<HeldSpan> spans) {
        List<Change> changes = new ArrayList<>();
        for (HeldSpan span : spans) {
            changes.add(new Change(span.from, 1));
            changes.add(new Change(span.to, -1));
        }
        changes.sort(Change.ORDER);
        int most = 0;
        int count = 0;
        for (Change change : changes) {
            count += change.by;
            most = Math.max(most, count);
        }
        return most;
    }

    private record Change(Instant at, int by) {
        /** Where one ends as another begins, they are not at once. */
        static final Comparator<Change> ORDER = Comparator.comparing(Change::at).thenComparing(Change::by);
    }
}
