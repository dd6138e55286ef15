package bagward.message;

import bagward.alarm.AlarmKey;
import bagward.fault.ImpossibleValueException;
import java.time.Instant;

/**
 * One state of one alarm that one person is told, at most once.
 *
 * @param person name of the person
 * @param alarm which alarm
 * @param raisedAt when it was raised; with the key it names this occurrence of the alarm
 * @param news what is told about it
 * @param number 1 for the first time, counting on for reminders
 */
public record Told(String person, AlarmKey alarm, Instant raisedAt, News news, int number) {
    /** What there is to tell about an alarm. */
    public enum News {
        /** It was raised. */
        RAISED,
        /** It still stands and nobody has acknowledged it. */
        REMINDED,
        /** Nobody of the first turn has acknowledged it. */
        SECOND_TURN,
        /** Its condition is gone. */
        RETURNED
    }

    /** Refuses a number below 1. */
    public Told {
        if (number < 1) {
            throw new ImpossibleValueException("the number of a telling must be 1 or more, not " + number);
        }
    }
}
