package bagward.store;

import java.time.Instant;

/** Instants as whole ms since 1970 UTC, as the tables keep them; far ones are clamped. */
final class Millis {
    private static final int NANOS_PER_MILLI = 1_000_000;

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
        boolean whole = instant.getNano() % NANOS_PER_MILLI == 0;
        return whole || before == Long.MAX_VALUE || before == Long.MIN_VALUE ? before : before + 1;
    }
}
