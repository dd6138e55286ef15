package bagward.alarm;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Instant;
import java.util.function.Consumer;

/**
 * The instants at which the newest {@link Spell} of a series becomes another one, or known again. Between two of them it
 * only lasts longer.
 */
public final class SpellTimes {
    private SpellTimes() {}

    /**
     * Tells the instants in order.
     *
     * @param limit in the unit of the series
     * @param deadband in the unit of the series
     * @param times takes them
     */
    public static void tell(RegularSeries series, double limit, double deadband, Consumer<Instant> times) {
        TimeGrid grid = series.grid();
        long freshCells = Spell.FRESH.toSeconds() / grid.step().toSeconds();
        int last = -1;
        boolean lastAbove = false;
        for (int i = 0; i < grid.size(); i++) {
            double value = series.valueOrNaN(i);
            if (Double.isNaN(value)) {
                continue;
            }
            boolean above = value >= (lastAbove ? limit - deadband : limit);
            boolean lapsed = last >= 0 && i - last - 1 > freshCells;
            if (lapsed) {
                times.accept(lapse(grid, last));
            }
            if (last < 0 || lapsed || above != lastAbove) {
                times.accept(grid.at(i));
            }
            last = i;
            lastAbove = above;
        }
        if (last >= 0) {
            times.accept(lapse(grid, last));
        }
    }

    /** When the newest known cell becomes too old to say anything. */
    private static Instant lapse(TimeGrid grid, int last) {
        return grid.at(last + 1).plus(Spell.FRESH).plusMillis(1);
    }
}
