package bagward.site.view;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmKey;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Rule;
import bagward.alarm.Subject;
import bagward.board.AlarmView;
import bagward.board.Board;
import bagward.board.SensorView;
import java.util.Optional;

/**
 * One thing for a person to do.
 *
 * @param standing how soon
 * @param mark what is the matter
 * @param place where to walk to: bay and spot, or the name of the sensor, house or part
 * @param house name of the house; empty if it is about no house
 * @param what the rule that calls, as people read it
 * @param figures the newest sentence about it, with numbers
 * @param fresh whether nobody has confirmed it yet
 * @param address page to go to
 * @param alarm the alarm with its rule and card
 */
public record ToDo(
        Standing standing,
        Mark mark,
        String place,
        String house,
        String what,
        String figures,
        boolean fresh,
        String address,
        AlarmView alarm) {
    /** What an alarm asks for. */
    public static ToDo of(Board board, AlarmView view) {
        Rule rule = view.rule();
        Alarm alarm = view.alarm();
        Subject subject = alarm.key().subject();
        return new ToDo(
                Standing.of(view),
                Mark.of(rule.kind()),
                view.spot().map(s -> Places.spot(board, s)).orElseGet(() -> name(board, subject)),
                view.spot()
                        .map(s -> Places.house(board, s.house()))
                        .orElseGet(() -> houseName(board, subject).orElse("")),
                rule.name() + (alarm.phase() == AlarmPhase.RETURNED_UNACKNOWLEDGED ? ", over by now" : ""),
                alarm.message(),
                alarm.phase() != AlarmPhase.ACKNOWLEDGED,
                address(alarm.key()),
                view);
    }

    private static String name(Board board, Subject subject) {
        if (subject instanceof Subject.OfSensor s) {
            return sensor(board, s)
                    .map(v -> v.sensor().name())
                    .orElse(s.sensor().value());
        }
        if (subject instanceof Subject.InHouse h) {
            return Places.house(board, h.house());
        }
        return subject.key().substring(subject.key().indexOf(':') + 1);
    }

    private static Optional<String> houseName(Board board, Subject subject) {
        return subject instanceof Subject.OfSensor s
                ? sensor(board, s).map(v -> Places.house(board, v.sensor().house()))
                : Optional.empty();
    }

    private static Optional<SensorView> sensor(Board board, Subject.OfSensor subject) {
        return board.sensors().stream()
                .filter(v -> v.sensor().id().equals(subject.sensor()))
                .findFirst();
    }

    private static String address(AlarmKey key) {
        Subject subject = key.subject();
        if (subject instanceof Subject.Bag bag) {
            return "/bag/" + bag.tag();
        }
        if (subject instanceof Subject.InHouse) {
            return AlarmWords.address(key);
        }
        return subject instanceof Subject.OfSensor ? "/sensors" : "/alarms";
    }
}
