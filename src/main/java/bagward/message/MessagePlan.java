package bagward.message;

import java.time.Duration;
import java.time.LocalTime;
import java.util.List;

/**
 * Who is told, and when.
 *
 * @param people in the order of the configuration
 * @param morning when the list of the day goes out, on the clock of the station
 * @param evening when the list of the night goes out
 * @param remindEvery how long an alarm may stand unacknowledged before its people are told again, and again
 * @param secondAfter how long an alarm may stand unacknowledged before the people of the second turn are told
 */
public record MessagePlan(
        List<Person> people, LocalTime morning, LocalTime evening, Duration remindEvery, Duration secondAfter) {
    /** Nobody is told; ours: lists before work and before the evening, a reminder after two hours, the second after one. */
    public static final MessagePlan NOBODY = new MessagePlan(
            List.of(), LocalTime.of(6, 30), LocalTime.of(17, 30), Duration.ofHours(2), Duration.ofHours(1));

    /** Copies the list. */
    public MessagePlan {
        people = List.copyOf(people);
    }
}
