package bagward.climate;

import bagward.fault.ImpossibleValueException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/**
 * A stretch of time, [from, to).
 *
 * @param from first instant
 * @param to first instant after it, not before from
 */
public record Span(Instant from, Instant to) {
    /** Refuses an end before the start. */
    public Span {
        if (to.isBefore(from)) {
            throw new ImpossibleValueException(
                    "a span from " + from + " to " + to + " is impossible: the end must not lie before the start");
        }
    }

    /** A civil day in a zone: 24 h long, but 23 or 25 h on the days on which clocks change. */
    public static Span ofDay(LocalDate day, ZoneId zone) {
        return new Span(
                day.atStartOfDay(zone).toInstant(),
                day.plusDays(1).atStartOfDay(zone).toInstant());
    }

    /** Its true length. */
    public Duration length() {
        return Duration.between(from, to);
    }

    /** What two spans share; of no length where they share nothing. */
    public Span within(Span other) {
        Instant start = from.isAfter(other.from) ? from : other.from;
        Instant end = to.isBefore(other.to) ? to : other.to;
        return end.isBefore(start) ? new Span(start, start) : new Span(start, end);
    }

    /** Whether an instant lies in it. */
    public boolean holds(Instant instant) {
        return !instant.isBefore(from) && instant.isBefore(to);
    }
}
