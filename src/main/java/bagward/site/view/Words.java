package bagward.site.view;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Numbers, times and spans as people read them on a page. */
public final class Words {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_AND_CLOCK =
            DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter FIELD = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm", Locale.ENGLISH);

    private Words() {}

    /** One decimal, with a point and a true minus sign: "21.4". */
    public static String oneDecimal(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return (text.equals("-0.0") ? "0.0" : text).replace('-', '−');
    }

    /** No decimals: "93". */
    public static String whole(double value) {
        return Long.toString(Math.round(value)).replace('-', '−');
    }

    /** Time of day in a zone: "14:05". */
    public static String clock(Instant at, ZoneId zone) {
        return CLOCK.format(at.atZone(zone));
    }

    /** Day in a zone: "Tue 14 Apr". */
    public static String day(Instant at, ZoneId zone) {
        return DAY.format(at.atZone(zone));
    }

    /** Day and time in a zone: "Tue 14 Apr 14:05". */
    public static String dayAndClock(Instant at, ZoneId zone) {
        return DAY_AND_CLOCK.format(at.atZone(zone));
    }

    /** A time as an input field of a form takes it, minutes in the zone. */
    public static String field(Instant at, ZoneId zone) {
        return FIELD.format(at.atZone(zone));
    }

    /** A span of time in its two largest useful parts: "45 s", "12 min", "3 h 20 min", "2 d 4 h". */
    public static String span(Duration span) {
        Duration positive = span.isNegative() ? span.negated() : span;
        if (positive.toSeconds() < 120) {
            return positive.toSeconds() + " s";
        }
        if (positive.toMinutes() < 60) {
            return positive.toMinutes() + " min";
        }
        if (positive.toHours() < 48) {
            return twoParts(positive.toHours(), "h", positive.toMinutesPart(), "min");
        }
        return twoParts(positive.toDays(), "d", positive.toHoursPart(), "h");
    }

    private static String twoParts(long large, String largeUnit, long small, String smallUnit) {
        return large + " " + largeUnit + (small == 0 ? "" : " " + small + " " + smallUnit);
    }

    /** When something is due, by days on the calendar: "today", "tomorrow", "in 3 days", "2 days late". */
    public static String dueIn(Instant due, Instant now, ZoneId zone) {
        LocalDate today = now.atZone(zone).toLocalDate();
        long days = due.atZone(zone).toLocalDate().toEpochDay() - today.toEpochDay();
        if (days == 0) {
            return "today";
        }
        if (days == 1) {
            return "tomorrow";
        }
        if (days == -1) {
            return "1 day late";
        }
        return days > 0 ? "in " + days + " days" : -days + " days late";
    }

    /** A count with its noun: "1 bag", "3 bags". */
    public static String count(long number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }

    /** The text with its first letter in upper case. */
    public static String sentence(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ENGLISH) + text.substring(1);
    }
}
