package bagward.watch;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEvent;
import bagward.store.AlarmStore;
import bagward.store.StoreException;
import java.time.Instant;
import java.util.List;

/** A store of alarms that can be away, and counts what it is asked to save. */
final class FailingAlarms implements AlarmStore {
    private final AlarmStore real;
    private volatile boolean away;
    private volatile int saves;

    FailingAlarms(AlarmStore real) {
        this.real = real;
    }

    void away(boolean isAway) {
        away = isAway;
    }

    int saves() {
        return saves;
    }

    @Override
    public AlarmBook loadAlarms() {
        return real.loadAlarms();
    }

    @Override
    public synchronized void save(AlarmBook book, List<AlarmEvent> events) {
        if (away) {
            throw new StoreException("the disk is away");
        }
        saves++;
        real.save(book, events);
    }

    @Override
    public List<AlarmEvent> newestEvents(int most) {
        return real.newestEvents(most);
    }

    @Override
    public List<AlarmEvent> events(Instant from, Instant to) {
        return real.events(from, to);
    }
}
