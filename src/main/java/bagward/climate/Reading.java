package bagward.climate;

import bagward.units.Checks;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.Set;

/**
 * One measured value; identified by series and time.
 *
 * @param series which quantity of which sensor
 * @param measuredAt when, to the millisecond
 * @param value in the canonical unit of the quantity, inside its credible range
 * @param flags what else to know
 */
public record Reading(SeriesId series, Instant measuredAt, double value, Set<ReadingFlag> flags) {

    /** Refuses values outside the credible range; cuts the time to milliseconds. */
    public Reading {
        Checks.within(
                series,
                value,
                series.quantity().lowest(),
                series.quantity().highest(),
                series.quantity().unitSymbol());
        measuredAt = measuredAt.truncatedTo(ChronoUnit.MILLIS);
        flags = Set.copyOf(flags);
    }

    /** Whether it was measured at its time; one that was not is kept on disk and left out of everything. */
    public boolean timeHolds() {
        return !flags.contains(ReadingFlag.CLOCK_WRONG);
    }

    /** The same with one more thing to know. */
    public Reading with(ReadingFlag flag) {
        Set<ReadingFlag> more = EnumSet.of(flag);
        more.addAll(flags);
        return new Reading(series, measuredAt, value, more);
    }

    /** A reading with nothing else to say. */
    public static Reading of(SeriesId series, Instant measuredAt, double value) {
        return new Reading(series, measuredAt, value, Set.of());
    }
}
