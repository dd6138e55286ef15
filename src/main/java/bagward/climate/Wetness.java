package bagward.climate;

/**
 * Wet, dry or unknown, cell by cell.
 *
 * @param states 1 wet, 0 dry, a gap where it is unknown
 */
public record Wetness(RegularSeries states) {
    /** Whether cell i is known to be wet. */
    public boolean wetAt(int i) {
        return states.valueOrNaN(i) == 1;
    }

    /** Whether anything is known of cell i. */
    public boolean knownAt(int i) {
        return states.known(i);
    }

    /** How long it was wet in a span. */
    public TimeAtLeast time(Span span) {
        return TimeAtLeast.atOrAbove(states, span, 1);
    }
}
