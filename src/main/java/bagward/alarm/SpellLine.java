package bagward.alarm;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * All spells of a series against one limit, found once: tells the newest {@link Spell} of any instant without looking back.
 * Hours without data are not counted.
 */
public final class SpellLine {
    private final RegularSeries series;
    private final double limit;
    private final double deadband;
    private final int[] begins;
    private final boolean firstAbove;

    /**
     * Finds the spells.
     *
     * @param limit in the unit of the series
     * @param deadband in the unit of the series, 0 or more
     */
    public SpellLine(RegularSeries series, double limit, double deadband) {
        this.series = series;
        this.limit = limit;
        this.deadband = deadband;
        int first = nextKnown(0);
        this.firstAbove = first < series.grid().size() && series.valueOrNaN(first) >= limit;
        this.begins = begins(first);
    }

    private int nextKnown(int from) {
        int next = from;
        while (next < series.grid().size() && !series.known(next)) {
            next++;
        }
        return next;
    }

    private int[] begins(int first) {
        int[] found = new int[8];
        int count = 0;
        boolean above = !firstAbove;
        for (int i = first; i < series.grid().size(); i++) {
            double value = series.valueOrNaN(i);
            if (i == first || (above ? value < limit - deadband : value >= limit)) {
                found = count == found.length ? Arrays.copyOf(found, 2 * count) : found;
                found[count++] = i;
                above = !above;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** What {@link Spell#newest} says at an instant, with no time without data. */
    public Spell at(Instant now) {
        TimeGrid grid = series.grid();
        int last = lastKnown(now);
        if (last < 0) {
            return new Spell(Verdict.Outcome.UNKNOWN, grid.start(), Double.NaN, Duration.ZERO);
        }
        Instant heard = grid.at(last + 1);
        double value = series.valueOrNaN(last);
        if (heard.plus(Spell.FRESH).isBefore(now)) {
            return new Spell(Verdict.Outcome.UNKNOWN, heard, value, Duration.ZERO);
        }
        int spell = spellOf(last);
        boolean above = (spell % 2 == 0) == firstAbove;
        return new Spell(
                above ? Verdict.Outcome.HOLDS : Verdict.Outcome.CLEAR, grid.at(begins[spell]), value, Duration.ZERO);
    }

    /** When the newest spell above had ended, if one had and the series is below at an instant. */
    public Optional<Instant> endedBy(Instant now) {
        int last = lastKnown(now);
        int spell = last < 0 ? 0 : spellOf(last);
        boolean below = (spell % 2 == 0) != firstAbove;
        return spell > 0 && below ? Optional.of(series.grid().at(begins[spell])) : Optional.empty();
    }

    /** {@link HeldSpan#within} the series. */
    public List<HeldSpan> within(Instant from, Instant to) {
        return HeldSpan.within(series, limit, deadband, from, to);
    }

    private int lastKnown(Instant now) {
        int last = Math.max(-1, Math.min(series.grid().size() - 1, series.grid().indexOf(now)));
        while (last >= 0 && !series.known(last)) {
            last--;
        }
        return last;
    }

    private int spellOf(int cell) {
        int found = Arrays.binarySearch(begins, cell);
        return found < 0 ? -found - 2 : found;
    }
}
