package bagward.alarm;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Instant;
import java.util.function.Consumer;

/**
 * The instants at which the newest {@link Spell} of a series may become another one. Between two of them it only lasts
 * longer. Some instants are told at which nothing changes, none is left out.
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
        int last = -1;
        int lastSide = 0;
        for (int i = 0; i < grid.size(); i++) {
            double value = series.valueOrNaN(i);
            if (Double.isNaN(value)) {
                continue;
            }
            int side = value >= limit ? 1 : value < limit - deadband ? -1 : 0;
            boolean lapsed = last >= 0 && grid.at(last + 1).plus(Spell.FRESH).isBefore(grid.at(i));
            if (lapsed) {
                times.accept(lapse(grid, last));
            }
            if (last < 0 || lapsed || side != lastSide) {
                times.accept(grid.at(i));
            }
            last = i;
            lastSide = side;
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
