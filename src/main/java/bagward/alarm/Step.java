package bagward.alarm;

import java.util.List;

/**
 * What one step of the alarm engine gives.
 *
 * @param book the state after it
 * @param events what changed, in the order of the alarms' keys; empty if nothing a person would notice did
 */
public record Step(AlarmBook book, List<AlarmEvent> events) {
    /** Copies the list. */
    public Step {
        events = List.copyOf(events);
    }

    /** Nothing changed. */
    static Step unchanged(AlarmBook book) {
        return new Step(book, List.of());
    }

    /** Whether anything changed. */
    public boolean changed() {
        return !events.isEmpty();
    }
}
