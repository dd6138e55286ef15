package bagward.alarm;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All alarms that are not normal, immutable: the state of the alarm engine. */
public final class AlarmBook {
    /** Nothing pending, nothing raised. */
    public static final AlarmBook EMPTY = new AlarmBook(Map.of());

    private final Map<AlarmKey, Alarm> alarms;

    private AlarmBook(Map<AlarmKey, Alarm> alarms) {
        this.alarms = Map.copyOf(alarms);
    }

    /** A book of these alarms; normal ones are left out. */
    public static AlarmBook of(Collection<Alarm> alarms) {
        Map<AlarmKey, Alarm> byKey = new HashMap<>();
        for (Alarm alarm : alarms) {
            if (alarm.phase() != AlarmPhase.NORMAL) {
                byKey.put(alarm.key(), alarm);
            }
        }
        return new AlarmBook(byKey);
    }

    /** The alarm of a key. */
    public Optional<Alarm> find(AlarmKey key) {
        return Optional.ofNullable(alarms.get(key));
    }

    /** The same book with some alarms changed; normal ones are taken out. */
    AlarmBook with(List<Alarm> others) {
        Map<AlarmKey, Alarm> changed = new HashMap<>(alarms);
        others.forEach(alarm -> changed.put(alarm.key(), alarm));
        return of(changed.values());
    }

    /** All of them, by rule and subject. */
    public List<Alarm> alarms() {
        return alarms.values().stream().sorted(Comparator.comparing(Alarm::key)).toList();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof AlarmBook book && alarms.equals(book.alarms);
    }

    @Override
    public int hashCode() {
        return alarms.hashCode();
    }

    @Override
    public String toString() {
        return alarms().toString();
    }
}
