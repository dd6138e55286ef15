package bagward.watch.rehearsal;

import bagward.board.Rehearsed;
import bagward.board.RehearsedPair;
import java.util.List;

/**
 * What rules would have done over a stretch of the past.
 *
 * @param days the stretch
 * @param bagDays how many bags hung for how long, days
 * @param sets the sets of rules that were tried, one or two
 */
public record RehearsalResult(RehearsedDays days, double bagDays, List<Rehearsed> sets) {
    private static final double BAGS = 100;

    /** Copies the list. */
    public RehearsalResult {
        sets = List.copyOf(sets);
    }

    /** So many alarms as a rate for 100 bags, per day; NaN if no bag hung. */
    public double rate(int alarms) {
        return bagDays > 0 ? BAGS * alarms / bagDays : Double.NaN;
    }

    /** The alarms of both sets side by side; those of one set alone if only one was tried. */
    public List<RehearsedPair> pairs() {
        return sets.size() > 1
                ? RehearsedPair.of(sets.get(0), sets.get(1))
                : sets.get(0).alarms().stream().map(RehearsedPair::alone).toList();
    }
}
