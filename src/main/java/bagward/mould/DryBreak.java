package bagward.mould;

import bagward.units.Checks;

/**
 * How long a dry break must be to end a wet spell. Shorter ones join the spells around them: the wet hours add up, the
 * dry ones do not.
 *
 * @param hours length of the break, h, 0 or more
 * @param joinsAtLimit whether a break of exactly that length still joins
 */
public record DryBreak(double hours, boolean joinsAtLimit) {
    /** Refuses a negative length. */
    public DryBreak {
        Checks.within("dry break", hours, 0, 1000, "h");
    }

    /** A break of this length or longer ends the spell. */
    public static DryBreak endingFrom(double hours) {
        return new DryBreak(hours, false);
    }

    /** Only a break longer than this ends the spell. */
    public static DryBreak endingBeyond(double hours) {
        return new DryBreak(hours, true);
    }

    /** Whether a dry break of some whole seconds ends the spell before it. No break at all never does. */
    boolean ends(long drySeconds) {
        double limit = hours * 3600;
        return drySeconds > 0 && (joinsAtLimit ? drySeconds > limit : drySeconds >= limit);
    }
}
