package bagward.site.view;

import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmKey;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Priority;
import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.alarm.Subject;
import bagward.board.Board;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Alarms as people read them. */
public final class AlarmWords {
    private AlarmWords() {}

    /** Page of one alarm. */
    public static String address(AlarmKey key) {
        return "/alarms/" + key.rule() + "/" + URLEncoder.encode(key.subject().key(), StandardCharsets.UTF_8);
    }

    /** Name of a rule; its short name if it is watched no more. */
    public static String rule(List<Rule> rules, RuleId id) {
        return rules.stream()
                .filter(rule -> rule.id().equals(id))
                .map(Rule::name)
                .findFirst()
                .orElse(id.value());
    }

    /** What an alarm is about: "bag L-104", "sensor Alder air", "Alder house". */
    public static String subject(Board board, Subject subject) {
        if (subject instanceof Subject.InHouse in) {
            return Places.house(board, in.house());
        }
        if (subject instanceof Subject.OfSensor of) {
            return "sensor "
                    + board.sensors().stream()
                            .filter(view -> view.sensor().id().equals(of.sensor()))
                            .map(view -> view.sensor().name())
                            .findFirst()
                            .orElse(of.sensor().value());
        }
        return subject.key().replaceFirst(":", " ");
    }

    /** What a change came to. */
    public static String change(AlarmEvent event) {
        return event.broughtBack() ? "brought back" : phase(event.to());
    }

    /** The state an alarm is in. */
    public static String phase(AlarmPhase phase) {
        return switch (phase) {
            case NORMAL -> "over";
            case PENDING -> "condition holds, waiting";
            case UNACKNOWLEDGED -> "raised";
            case ACKNOWLEDGED -> "seen";
            case RETURNED_UNACKNOWLEDGED -> "over before it was seen";
            case SHELVED -> "shelved";
            case SUPPRESSED -> "suppressed by design";
            case OUT_OF_SERVICE -> "out of service";
        };
    }

    /** How much an alarm matters. */
    public static String priority(Priority priority) {
        return switch (priority) {
            case LOW -> "low";
            case MEDIUM -> "medium";
            case HIGH -> "high";
        };
    }
}
