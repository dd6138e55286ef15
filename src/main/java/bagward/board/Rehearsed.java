package bagward.board;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEngine;
import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmLoad;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Priority;
import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What one set of rules would have done.
 *
 * @param rules the rules
 * @param alarms every alarm, oldest first
 * @param load what they would have asked of people
 */
public record Rehearsed(List<Rule> rules, List<RehearsedAlarm> alarms, AlarmLoad load) {
    private static final Comparator<RehearsedAlarm> ORDER =
            Comparator.comparing(RehearsedAlarm::raised).thenComparing(RehearsedAlarm::key);

    /** Copies the lists. */
    public Rehearsed {
        rules = List.copyOf(rules);
        alarms = List.copyOf(alarms);
    }

    /**
     * A set of rules with its alarms in any order.
     *
     * @param end of what was looked at
     * @param zone of the civil days
     */
    public static Rehearsed of(List<Rule> rules, List<RehearsedAlarm> alarms, Instant end, ZoneId zone) {
        List<AlarmEvent> raised = alarms.stream().map(Rehearsed::event).toList();
        return new Rehearsed(
                rules, alarms.stream().sorted(ORDER).toList(), AlarmLoad.of(raised, AlarmBook.EMPTY, end, zone));
    }

    private static AlarmEvent event(RehearsedAlarm alarm) {
        return new AlarmEvent(
                alarm.raised(), alarm.key(), AlarmPhase.NORMAL, AlarmPhase.UNACKNOWLEDGED, AlarmEngine.RULE, "");
    }

    /** How often a rule would have called. */
    public int times(RuleId rule) {
        return Optional.ofNullable(load.perRule().get(rule)).orElse(0);
    }

    /** How often the rules of a priority would have called. */
    public int times(Priority priority) {
        return rules.stream()
                .filter(rule -> rule.priority() == priority)
                .mapToInt(rule -> times(rule.id()))
                .sum();
    }

    /** Alarms of rules that ask for a walk by themselves: medium and high. */
    public int pressing() {
        return times(Priority.MEDIUM) + times(Priority.HIGH);
    }

    /** Alarms of the civil day that had most. */
    public int mostOnADay() {
        return load.raisedPerDay().values().stream()
                .mapToInt(Integer::intValue)
                .max()
                .orElse(0);
    }
}
