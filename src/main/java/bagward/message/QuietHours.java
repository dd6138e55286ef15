package bagward.message;

import bagward.alarm.Priority;
import bagward.fault.ImpossibleValueException;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;

/**
 * Hours of the day, on the clock of the station, in which a person is left alone.
 *
 * @param from first minute
 * @param to first minute after them; before {@code from} if they run over midnight
 * @param breakFrom the lowest priority that is told all the same
 */
public record QuietHours(LocalTime from, LocalTime to, Priority breakFrom) {
    /** Refuses hours that would be none or all. */
    public QuietHours {
        if (from.equals(to)) {
            throw new ImpossibleValueException("quiet hours must end at another time than they start");
        }
    }

    /**
     * Reads hours such as "20:00-06:30".
     *
     * @throws ImpossibleValueException if it is something else
     */
    public static QuietHours parse(String text, Priority breakFrom) {
        int dash = text.indexOf('-');
        try {
            return new QuietHours(
                    LocalTime.parse(text.substring(0, Math.max(dash, 0)).strip()),
                    LocalTime.parse(text.substring(dash + 1).strip()),
                    breakFrom);
        } catch (DateTimeParseException e) {
            throw new ImpossibleValueException("must be two times of the day such as 20:00-06:30");
        }
    }

    /** Whether an instant lies in them. */
    public boolean hold(Instant at, ZoneId zone) {
        LocalTime time = at.atZone(zone).toLocalTime();
        boolean afterStart = !time.isBefore(from);
        boolean beforeEnd = time.isBefore(to);
        return from.isBefore(to) ? afterStart && beforeEnd : afterStart || beforeEnd;
    }

    /** Whether a person may be told something of a priority at an instant. */
    public boolean allow(Priority priority, Instant at, ZoneId zone) {
        return priority.compareTo(breakFrom) >= 0 || !hold(at, zone);
    }
}
