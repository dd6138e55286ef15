package bagward.store;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** Instants as whole ms since 1970 UTC, as the tables keep them; far ones are clamped. */
final class Millis {

    private Millis() {}

    /** The last whole millisecond at or before an instant. */
    static long atOrBefore(Instant instant) {
        try {
            return instant.toEpochMilli();
        } catch (ArithmeticException tooFar) {
            return instant.isBefore(Instant.EPOCH) ? Long.MIN_VALUE : Long.MAX_VALUE;
        }
    }

    /** The first whole millisecond at or after an instant. */
    static long atOrAfter(Instant instant) {
        long before = atOrBefore(instant);
        boolean whole = instant.equals(instant.truncatedTo(ChronoUnit.MILLIS));
        return whole || before == Long.MAX_VALUE || before == Long.MIN_VALUE ? before : before + 1;
    }
}
