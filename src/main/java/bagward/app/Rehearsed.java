package bagward.app;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmLoad;
import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.bag.Head;
import bagward.board.BoardInputs;
import bagward.board.Rehearsal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;

/**
 * What one set of rules would have done.
 *
 * @param events every change of every alarm
 * @param load what they would have asked of people
 */
record Rehearsed(List<AlarmEvent> events, AlarmLoad load) {
    /** Sweeps sensors and heads, the heads on all processors; the result does not depend on their order. */
    static Rehearsed of(BoardInputs season, Instant from, Duration every, IntConsumer headsDone) {
        Rehearsal rehearsal = new Rehearsal(season, from, every);
        AtomicInteger done = new AtomicInteger();
        List<AlarmEvent> events = new ArrayList<>(rehearsal.ofSensors());
        List<Head> heads = rehearsal.heads();
        heads.parallelStream()
                .map(head -> {
                    List<AlarmEvent> ofHead = rehearsal.of(head);
                    headsDone.accept(done.incrementAndGet() * 100 / heads.size());
                    return ofHead;
                })
                .toList()
                .forEach(events::addAll);
        return new Rehearsed(
                List.copyOf(events),
                AlarmLoad.of(
                        events, AlarmBook.EMPTY, season.now(), season.station().zone()));
    }

    int times(RuleId rule) {
        return Optional.ofNullable(load.perRule().get(rule)).orElse(0);
    }

    /** Alarms a day of rules that ask for a walk by themselves: medium and high. */
    int pressing(List<Rule> rules) {
        return rules.stream()
                .filter(rule -> rule.priority().compareTo(bagward.alarm.Priority.LOW) > 0)
                .mapToInt(rule -> times(rule.id()))
                .sum();
    }

    int mostOnADay() {
        return load.raisedPerDay().values().stream()
                .mapToInt(Integer::intValue)
                .max()
                .orElse(0);
    }
}
