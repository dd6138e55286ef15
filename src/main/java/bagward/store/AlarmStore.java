package bagward.store;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEvent;
import java.time.Instant;
import java.util.List;

/** The state of the alarm engine and its journal. */
public interface AlarmStore {
    /** The state as it was last saved; empty for a new store. */
    AlarmBook loadAlarms();

    /**
     * Saves the state and adds events to the journal, both or neither.
     *
     * @throws StoreException if they could not be stored
     */
    void save(AlarmBook book, List<AlarmEvent> events);

    /** The newest events, newest first. */
    List<AlarmEvent> newestEvents(int most);

    /**
     * The events of a time, oldest first; times count to the millisecond.
     *
     * @param from first instant that counts
     * @param to first instant that does not count any more
     */
    List<AlarmEvent> events(Instant from, Instant to);
}
