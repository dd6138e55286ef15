package bagward.alarm;

import java.time.Instant;

/**
 * What a rule says of a subject at one time.
 *
 * @param key rule and subject
 * @param outcome whether its condition holds; UNKNOWN changes nothing
 * @param since event time from which the outcome holds without a break
 * @param value the value it was judged by, in the unit of the rule's kind; NaN if unknown
 * @param message one sentence for a person, with numbers and units
 */
public record Verdict(AlarmKey key, Outcome outcome, Instant since, double value, String message) {
    /** Whether a condition holds. */
    public enum Outcome {
        /** It does not hold. */
        CLEAR,
        /** It holds. */
        HOLDS,
        /** There is no data to say. */
        UNKNOWN,
        /** There is no data to say, because something failed that has an alarm of its own; the message names it. */
        SUPPRESSED,
        /** It holds, and another alarm calls for the same; the message names that. */
        COVERED
    }

    /** The same verdict with more to say. */
    public Verdict adding(String what) {
        return new Verdict(key, outcome, since, value, message + "; " + what);
    }

    /** The same verdict, suppressed by something that has an alarm of its own. */
    public Verdict suppressedBy(String what) {
        return new Verdict(key, Outcome.SUPPRESSED, since, value, what);
    }

    /** The same verdict, whose condition holds, left to another alarm that calls for the same. */
    public Verdict coveredBy(String what) {
        return new Verdict(key, Outcome.COVERED, since, value, what);
    }

    /** Whether its condition holds, whoever calls for it. */
    public boolean met() {
        return outcome == Outcome.HOLDS || outcome == Outcome.COVERED;
    }
}
