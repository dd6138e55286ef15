package bagward.site;

import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmKey;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Subject;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** What alarms of the invented station did: one bag chatters, one was shelved by a person with an odd name. */
final class SampleJournal {
    private static final AlarmKey DAMP = new AlarmKey(SampleStation.DAMP.id(), new Subject.Bag(SampleRegister.DAMP));
    private static final AlarmKey SILENT =
            new AlarmKey(SampleStation.SENSOR_SILENT.id(), new Subject.OfSensor(SampleStation.SILENT));

    private SampleJournal() {}

    /** Oldest first. */
    static List<AlarmEvent> before(Instant now) {
        List<AlarmEvent> events = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            Instant at = now.minus(Duration.ofHours(30 - i));
            events.add(event(at, DAMP, AlarmPhase.NORMAL, AlarmPhase.UNACKNOWLEDGED, "rule", ""));
            events.add(
                    event(at.plusSeconds(600), DAMP, AlarmPhase.UNACKNOWLEDGED, AlarmPhase.ACKNOWLEDGED, "=Ada", ""));
            events.add(event(at.plusSeconds(1200), DAMP, AlarmPhase.ACKNOWLEDGED, AlarmPhase.NORMAL, "rule", ""));
        }
        Instant silent = now.minus(Duration.ofHours(5));
        events.add(event(silent, SILENT, AlarmPhase.NORMAL, AlarmPhase.UNACKNOWLEDGED, "rule", ""));
        events.add(event(
                silent.plusSeconds(900),
                SILENT,
                AlarmPhase.UNACKNOWLEDGED,
                AlarmPhase.SHELVED,
                "Bo",
                "its bench is washed, \"back\" by noon"));
        events.add(event(now.minusSeconds(5400), DAMP, AlarmPhase.NORMAL, AlarmPhase.UNACKNOWLEDGED, "rule", ""));
        return events;
    }

    private static AlarmEvent event(Instant at, AlarmKey key, AlarmPhase from, AlarmPhase to, String by, String why) {
        return new AlarmEvent(at, key, from, to, by, "as it stood at " + at, why);
    }
}
