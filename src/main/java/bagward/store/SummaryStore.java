package bagward.store;

import bagward.climate.SeriesId;
import bagward.climate.Summary;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * Summaries of ten minutes and of days, which stay when readings go, and the list of days that are due to be summed
 * up. Safe for use by several threads.
 */
public interface SummaryStore {
    /** Notes that readings of these days came or are about to come; on disk when it returns. */
    void raise(Collection<SeriesDay> days);

    /** Days that are due, oldest first. */
    List<Due> due(int most);

    /** The oldest day that is due. */
    Optional<LocalDate> oldestDue();

    /**
     * Replaces the summaries of a day, all at once, and crosses it off the list unless it was raised again meanwhile. Of
     * a day that reaches before {@link #keptSince} only what is missing is added: its readings may be gone, and fewer
     * must not replace more.
     *
     * @param due what the summaries were made for
     * @param result the summaries
     */
    void put(Due due, Result result);

    /** Summaries of ten minutes that begin in [from, to), oldest first. */
    List<Summary> tenMinutes(SeriesId series, Instant from, Instant to);

    /** Summaries of the days in [from, to), oldest first. */
    List<Summary> days(SeriesId series, LocalDate from, LocalDate to);

    /** Readings before this may be gone; {@link Instant#MIN} if none were ever deleted. */
    Instant keptSince();

    /** Notes that readings before an instant may go from now on. */
    void keepSince(Instant instant);

    /**
     * A day that is due.
     *
     * @param day the day
     * @param raised how often it was raised
     */
    record Due(SeriesDay day, long raised) {}

    /**
     * What a day is summed up to.
     *
     * @param reach the first instant of the day and the last before the next one; ten minutes that reach over either belong
     *     to both days and are the same for both
     * @param tenMinutes summaries of the ten minutes that the day touches
     * @param day summary of the day; empty if nothing is known of it
     */
    record Result(bagward.climate.Span reach, List<Summary> tenMinutes, Optional<Summary> day) {
        /** Copies the list. */
        public Result {
            tenMinutes = List.copyOf(tenMinutes);
        }
    }
}
