package bagward.alarm;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;

/**
 * The newest spell of a series at or above a limit, or below it. A spell above begins when a value reaches the limit and
 * ends only when one falls below the limit less the deadband. Gaps do not end a spell; their length is counted.
 *
 * @param outcome whether the series is in a spell above (HOLDS), below (CLEAR), or not known (UNKNOWN: no value in the
 *     last {@link #FRESH})
 * @param since start of the first cell of the spell; for UNKNOWN the end of the last known cell, or the start of the
 *     series
 * @param value the newest known value in the unit of the series; NaN if there is none
 * @param unknown how much of the spell is without data
 */
public record Spell(Verdict.Outcome outcome, Instant since, double value, Duration unknown) {
    /** How old the newest value may be before nothing is said any more. */
    public static final Duration FRESH = Duration.ofMinutes(10);

    /**
     * The newest spell.
     *
     * @param series values with gaps
     * @param limit in the unit of the series
     * @param deadband in the unit of the series, 0 or more
     * @param now cells that start later are ignored
     */
    public static Spell newest(RegularSeries series, double limit, double deadband, Instant now) {
        TimeGrid grid = series.grid();
        int end = Math.max(0, Math.min(grid.size(), grid.indexOf(now) + 1));
        int last = end - 1;
        while (last >= 0 && !series.known(last)) {
            last--;
        }
        if (last < 0) {
            return new Spell(Verdict.Outcome.UNKNOWN, grid.start(), Double.NaN, Duration.ZERO);
        }
        Instant heard = grid.at(last + 1);
        double value = series.valueOrNaN(last);
        if (heard.plus(FRESH).isBefore(now)) {
            return new Spell(Verdict.Outcome.UNKNOWN, heard, value, Duration.ZERO);
        }
        boolean above = above(series, last, limit, deadband);
        int first = first(series, last, above, limit, deadband);
        int known = 0;
        for (int i = first; i < end; i++) {
            known += series.known(i) ? 1 : 0;
        }
        return new Spell(
                above ? Verdict.Outcome.HOLDS : Verdict.Outcome.CLEAR,
                grid.at(first),
                value,
                grid.step().multipliedBy(end - first - known));
    }

    /** Whether cell i is in a spell above: decided by the newest value up to it that is not within the deadband. */
    static boolean above(RegularSeries series, int i, double limit, double deadband) {
        for (int k = i; k >= 0; k--) {
            double value = series.valueOrNaN(k);
            if (value >= limit) {
                return true;
            }
            if (value < limit - deadband) {
                return false;
            }
        }
        return false;
    }

    /** First cell of the spell that holds cell i. */
    private static int first(RegularSeries series, int i, boolean above, double limit, double deadband) {
        int first = i;
        for (int k = i; k >= 0; k--) {
            double value = series.valueOrNaN(k);
            if (above ? value < limit - deadband : value >= limit) {
                return first;
            }
            // A spell above starts at the limit; a spell below starts where it fell past the deadband.
            if (above ? value >= limit : value < limit - deadband) {
                first = k;
            }
        }
        return above ? first : earliestKnown(series, first);
    }

    /** A spell below that reaches back to the first value starts there, also if that lies within the deadband. */
    private static int earliestKnown(RegularSeries series, int otherwise) {
        for (int k = 0; k < otherwise; k++) {
            if (series.known(k)) {
                return k;
            }
        }
        return otherwise;
    }
}
