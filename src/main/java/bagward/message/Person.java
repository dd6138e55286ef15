package bagward.message;

import bagward.alarm.Priority;
import bagward.fault.ImpossibleValueException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * Somebody who is told about alarms.
 *
 * @param name as people say it; also the name under which alarms are acknowledged from a message
 * @param channels ways to reach them, all of which are used
 * @param turn whether they are told at once or when nobody acknowledged in time
 * @param tellFrom the lowest priority that is told by itself; what is lower waits for the lists
 * @param quiet hours in which they are left alone
 * @param lists whether they get the morning and the evening list
 */
public record Person(
        String name,
        List<ChannelName> channels,
        Turn turn,
        Priority tellFrom,
        Optional<QuietHours> quiet,
        boolean lists) {
    /** Who is told first. */
    public enum Turn {
        /** Told at once. */
        FIRST,
        /** Told when nobody acknowledged in time. */
        SECOND
    }

    /** Refuses a person without a name or whom nothing reaches; copies the list. */
    public Person {
        channels = List.copyOf(channels);
        if (name.isBlank() || channels.isEmpty()) {
            throw new ImpossibleValueException("a person needs a name and at least one channel");
        }
    }

    /** Whether an alarm of a priority is told to them by itself at an instant. */
    public boolean listens(Priority priority, Instant at, ZoneId zone) {
        return priority.compareTo(tellFrom) >= 0
                && quiet.map(hours -> hours.allow(priority, at, zone)).orElse(true);
    }
}
