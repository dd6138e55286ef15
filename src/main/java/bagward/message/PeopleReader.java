package bagward.message;

import bagward.alarm.Priority;
import bagward.document.Section;
import bagward.fault.ImpossibleValueException;
import java.time.Duration;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads who is told and when. Keys of an entry of the list {@code people}:
 *
 * <ul>
 *   <li>{@code name}, {@code channels} (names of channels; required)
 *   <li>{@code turn}: first (usual) or second: told when nobody acknowledged in time
 *   <li>{@code tell-from}: lowest priority that is told by itself, medium if left out
 *   <li>{@code quiet}: hours such as "20:00-06:30"; {@code quiet-but}: lowest priority told in them all the same, high if
 *       left out
 *   <li>{@code lists}: whether the morning and the evening list are sent, true if left out
 * </ul>
 */
public final class PeopleReader {
    private static final Map<String, Priority> PRIORITIES =
            Map.of("low", Priority.LOW, "medium", Priority.MEDIUM, "high", Priority.HIGH);

    private static final Map<String, Person.Turn> TURNS =
            Map.of("first", Person.Turn.FIRST, "second", Person.Turn.SECOND);

    private PeopleReader() {}

    /**
     * Reads the people.
     *
     * @param people entries of the list {@code people}
     * @param channels channels there are
     * @return all people in whose entry nothing was refused
     */
    public static List<Person> people(List<Section> people, Set<ChannelName> channels) {
        List<Person> found = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Section entry : people) {
            person(entry, channels, names).ifPresent(found::add);
        }
        return found;
    }

    /**
     * Reads the times of messages, of which each has a usual value: {@code morning} and {@code evening} (time of the day),
     * {@code remind-every}, {@code second-after}. It does not end the section.
     */
    public static MessagePlan plan(Section section, List<Person> people) {
        MessagePlan usual = MessagePlan.NOBODY;
        return new MessagePlan(
                people,
                section.findValue("morning", PeopleReader::time).orElse(usual.morning()),
                section.findValue("evening", PeopleReader::time).orElse(usual.evening()),
                section.duration("remind-every", Duration.ofMinutes(15), Duration.ofDays(7), usual.remindEvery()),
                section.duration("second-after", Duration.ofMinutes(5), Duration.ofDays(7), usual.secondAfter()));
    }

    private static Optional<Person> person(Section entry, Set<ChannelName> channels, Set<String> names) {
        String name = entry.text("name");
        if (!name.isEmpty() && !names.add(name)) {
            entry.refuse("name", "must be given to one person only");
        }
        List<ChannelName> reached = reached(entry, channels);
        Person.Turn turn = entry.choice("turn", TURNS, Person.Turn.FIRST);
        Priority tellFrom = entry.choice("tell-from", PRIORITIES, Priority.MEDIUM);
        Priority breakFrom = entry.choice("quiet-but", PRIORITIES, Priority.HIGH);
        Optional<QuietHours> quiet = entry.findValue("quiet", text -> QuietHours.parse(text, breakFrom));
        boolean lists = entry.flag("lists", true);
        return entry.make(() -> new Person(name, reached, turn, tellFrom, quiet, lists));
    }

    private static List<ChannelName> reached(Section entry, Set<ChannelName> channels) {
        List<ChannelName> reached = new ArrayList<>();
        for (String text : entry.texts("channels", 1)) {
            Optional<ChannelName> known =
                    channels.stream().filter(c -> c.value().equals(text)).findFirst();
            known.ifPresentOrElse(
                    reached::add,
                    () -> entry.refuse("channels", "'" + text + "' must be the name of one of deliveries.channels"));
        }
        return reached;
    }

    private static LocalTime time(String text) {
        try {
            return LocalTime.parse(text);
        } catch (DateTimeParseException e) {
            throw new ImpossibleValueException("must be a time of the day such as 06:30");
        }
    }
}
