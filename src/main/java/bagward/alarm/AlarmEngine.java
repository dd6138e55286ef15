package bagward.alarm;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Moves all alarms one step: state, time and verdicts in, state and events out. Nothing is kept between calls, so a
 * book that was saved and loaded goes on as if nothing had happened, and asking twice changes nothing.
 *
 * <p>A running on-delay leaves no event. A rule whose on-delay was lengthened does not take back what it has raised.
 */
public final class AlarmEngine {
    /** Who did it, when no person did. */
    public static final String RULE = "rule";

    private AlarmEngine() {}

    /**
     * The next state of all alarms.
     *
     * @param book the state so far
     * @param now the time to judge at
     * @param verdicts one for each rule and each subject that is there; an alarm without one (bag taken off, sensor or
     *     rule removed) returns to normal
     * @param rules all rules; verdicts of others are ignored
     */
    public static Step step(AlarmBook book, Instant now, List<Verdict> verdicts, Collection<Rule> rules) {
        Map<RuleId, Rule> byId = new HashMap<>();
        rules.forEach(rule -> byId.put(rule.id(), rule));
        Map<AlarmKey, Verdict> judged = new TreeMap<>();
        for (Verdict verdict : verdicts) {
            if (byId.containsKey(verdict.key().rule())) {
                judged.put(verdict.key(), verdict);
            }
        }
        Changes changes = new Changes(now);
        judged.forEach((key, verdict) -> changes.record(book.find(key), moved(book, byId, verdict, now), RULE));
        for (Alarm alarm : book.alarms()) {
            if (!judged.containsKey(alarm.key())) {
                changes.over(alarm);
            }
        }
        return changes.step();
    }

    private static Optional<Alarm> moved(AlarmBook book, Map<RuleId, Rule> rules, Verdict verdict, Instant now) {
        Rule rule = rules.get(verdict.key().rule());
        if (rule == null) {
            return Optional.empty();
        }
        LifeCycle life = new LifeCycle(rule, now);
        return book.find(verdict.key()).map(alarm -> life.next(alarm, verdict)).or(() -> life.begin(verdict));
    }

    /**
     * A person confirms alarms. One that has returned goes from the list; one that is confirmed already, or not listed,
     * stays as it is. Each one that changes leaves an event.
     */
    public static Step acknowledge(AlarmBook book, Set<AlarmKey> keys, String who, Instant now) {
        List<Alarm> seen = new ArrayList<>();
        List<AlarmEvent> events = new ArrayList<>();
        for (AlarmKey key : new TreeSet<>(keys)) {
            Optional<Alarm> before = book.find(key);
            before.flatMap(alarm -> seen(alarm, who, now)).ifPresent(after -> {
                seen.add(after);
                events.add(event(before.orElseThrow(), after, who, now, ""));
            });
        }
        return events.isEmpty() ? Step.unchanged(book) : new Step(book.with(seen), events);
    }

    private static Optional<Alarm> seen(Alarm alarm, String who, Instant now) {
        return switch (alarm.phase()) {
            case UNACKNOWLEDGED -> Optional.of(alarm.acknowledged(who, now));
            case RETURNED_UNACKNOWLEDGED -> Optional.of(alarm.in(AlarmPhase.NORMAL));
            default -> Optional.empty();
        };
    }

    static Step change(AlarmBook book, Alarm before, Alarm after, String who, Instant now, String why) {
        return new Step(book.with(List.of(after)), List.of(event(before, after, who, now, why)));
    }

    private static AlarmEvent event(Alarm before, Alarm after, String who, Instant now, String why) {
        return new AlarmEvent(now, after.key(), before.phase(), after.phase(), who, after.message(), why);
    }

    /** Collects the alarms and events of one step. */
    private static final class Changes {
        private final Instant now;
        private final List<Alarm> alarms = new ArrayList<>();
        private final List<AlarmEvent> events = new ArrayList<>();

        Changes(Instant now) {
            this.now = now;
        }

        void record(Optional<Alarm> before, Optional<Alarm> after, String by) {
            after.ifPresent(alarm -> {
                alarms.add(alarm);
                AlarmPhase from = before.map(Alarm::phase).orElse(AlarmPhase.NORMAL);
                String why = alarm.phase() == AlarmPhase.SUPPRESSED
                        ? alarm.aside().map(Aside::why).orElse("")
                        : "";
                note(alarm, from, alarm.phase(), by, alarm.message(), why);
            });
        }

        void over(Alarm alarm) {
            note(alarm, alarm.phase(), AlarmPhase.NORMAL, RULE, "no longer watched: " + alarm.message(), "");
        }

        private void note(Alarm alarm, AlarmPhase from, AlarmPhase to, String by, String message, String why) {
            if (from != to && (noticed(from) || noticed(to))) {
                events.add(new AlarmEvent(now, alarm.key(), from, to, by, message, why));
            }
        }

        private static boolean noticed(AlarmPhase phase) {
            return phase.listed() || phase.setAside();
        }

        Step step() {
            return new Step(AlarmBook.of(alarms), events);
        }
    }
}
