package bagward.message;

import bagward.alarm.Priority;
import bagward.fault.ImpossibleValueException;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Something to tell one person.
 *
 * @param id stable name: two messages of the same id are one. It is made of what the message tells (person, states, day
 *     of a list), never of the time at which it was composed, so that composing again after a restart gives the same
 * @param at when it was composed
 * @param person name of the person
 * @param priority the highest of what it tells
 * @param subject one line
 * @param text plain text with numbers, units and places; for each rule its action card and caution
 * @param tells states of alarms that it tells; empty for a list that is sent anyway
 * @param to channels that it goes out by
 */
public record Message(
        String id,
        Instant at,
        String person,
        Priority priority,
        String subject,
        String text,
        List<Told> tells,
        Set<ChannelName> to) {
    private static final int LONGEST_ID = 200;

    /** Refuses a message without id, subject or channel, and a subject of several lines; copies the collections. */
    public Message {
        if (id.isBlank() || id.length() > LONGEST_ID) {
            throw new ImpossibleValueException("the id of a message must have 1 to " + LONGEST_ID + " characters");
        }
        if (subject.isBlank() || subject.lines().count() != 1) {
            throw new ImpossibleValueException("the subject of a message must be one line: '" + subject + "'");
        }
        if (to.isEmpty()) {
            throw new ImpossibleValueException("message " + id + " must go to at least one channel");
        }
        tells = List.copyOf(tells);
        to = Collections.unmodifiableSortedSet(new TreeSet<>(to));
    }
}
