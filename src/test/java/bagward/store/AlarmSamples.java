package bagward.store;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmKey;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Aside;
import bagward.alarm.RuleId;
import bagward.alarm.Subject;
import bagward.bag.TagCode;
import bagward.climate.SensorId;
import bagward.station.HouseId;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Alarms for tests. */
final class AlarmSamples {
    private static final Instant TIME = Instant.parse("2026-05-04T03:02:01.123456789Z");

    private static final AlarmKey DAMP =
            new AlarmKey(new RuleId("damp-long"), new Subject.Bag(new TagCode("R26-0147")));

    private AlarmSamples() {}

    /** One alarm of every subject and phase, with this message. */
    static AlarmBook book(String message) {
        RuleId rule = new RuleId("silent");
        return AlarmBook.of(List.of(
                new Alarm(
                        DAMP,
                        AlarmPhase.PENDING,
                        TIME,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        message),
                new Alarm(
                        new AlarmKey(rule, new Subject.InHouse(new HouseId("north"))),
                        AlarmPhase.UNACKNOWLEDGED,
                        TIME,
                        Optional.of(TIME.plusSeconds(60)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        message),
                new Alarm(
                        new AlarmKey(rule, new Subject.OfSensor(new SensorId("air:1".replace(':', '-')))),
                        AlarmPhase.ACKNOWLEDGED,
                        TIME,
                        Optional.of(TIME.plusSeconds(60)),
                        Optional.of(TIME.plusSeconds(90)),
                        Optional.of("Ida \"quoted\" Öst"),
                        Optional.empty(),
                        message),
                new Alarm(
                        new AlarmKey(rule, new Subject.OfSystem("store: file")),
                        AlarmPhase.RETURNED_UNACKNOWLEDGED,
                        TIME,
                        Optional.of(TIME.plusSeconds(60)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(TIME.plusSeconds(120)),
                        message),
                new Alarm(
                        new AlarmKey(new RuleId("shelved"), DAMP.subject()),
                        AlarmPhase.SHELVED,
                        TIME,
                        Optional.of(TIME.plusSeconds(60)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        message,
                        Optional.of(new Aside("Ida", TIME, Optional.of(TIME.plusSeconds(3600)), "bay is washed"))),
                new Alarm(
                        new AlarmKey(new RuleId("off"), DAMP.subject()),
                        AlarmPhase.OUT_OF_SERVICE,
                        TIME,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        message,
                        Optional.of(new Aside("Ida", TIME, Optional.empty(), "sensor is calibrated")))));
    }

    /** An event with this message. */
    static AlarmEvent event(String message) {
        return new AlarmEvent(TIME, DAMP, AlarmPhase.PENDING, AlarmPhase.UNACKNOWLEDGED, "rule", message);
    }
}
