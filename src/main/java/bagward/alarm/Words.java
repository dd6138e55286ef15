package bagward.alarm;

import bagward.units.Decimals;
import java.time.Duration;

/** Numbers as sentences about alarms write them. */
final class Words {
    private Words() {}

    /** A duration: "20 s" below a minute, "40 min" below an hour, "7.5 h" below two days, else "2.3 days". */
    static String duration(Duration duration) {
        if (duration.toSeconds() < 60) {
            return duration.toSeconds() + " s";
        }
        double minutes = duration.toSeconds() / 60.0;
        if (minutes < 60) {
            return number(minutes, 0) + " min";
        }
        return minutes < 48 * 60 ? number(minutes / 60, 1) + " h" : number(minutes / 1440, 1) + " days";
    }

    /** A number with at most so many digits after the point, and none for nothing. */
    static String number(double value, int digits) {
        String text = Decimals.fixed(value, digits);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
