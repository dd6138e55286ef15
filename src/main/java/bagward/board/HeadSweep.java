package bagward.board;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEngine;
import bagward.alarm.AlarmEvent;
import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.alarm.RuleKind;
import bagward.alarm.Step;
import bagward.alarm.Verdict;
import bagward.bag.Bagging;
import bagward.bag.Head;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The alarms of one head over a rehearsal. Instants between which nothing can change but the wording are left out, but for
 * the last before each change, whose wording an alarm may keep. Used once, by one thread.
 */
final class HeadSweep {
    /** A climate is computed for so long at a time: a bag that was forgotten costs no more than several others. */
    private static final Duration STRETCH = Duration.ofDays(7);

    private final Rehearsal rehearsal;
    private final Head head;
    private final Map<RuleId, Rule> rules = new HashMap<>();
    private final List<AlarmEvent> events = new ArrayList<>();
    private final boolean together;
    private AlarmBook book = AlarmBook.EMPTY;
    private @Nullable SweptBag swept;
    private Knowledge believed = Knowledge.NONE;
    private Instant sweptUntil = Instant.MIN;

    HeadSweep(Rehearsal rehearsal, Head head) {
        this.rehearsal = rehearsal;
        this.head = head;
        rehearsal.rules().forEach(rule -> rules.put(rule.id(), rule));
        this.together = !HeldBag.rules(rehearsal.rules()).isEmpty();
    }

    private HouseSweep calls() {
        return rehearsal.calls(head.spot().house());
    }

    List<AlarmEvent> events() {
        if (head.baggings().isEmpty()) {
            return List.of();
        }
        Instant first = head.baggings().get(0).putOn();
        Instant last =
                head.baggings().get(head.baggings().size() - 1).takenOff().orElse(rehearsal.end());
        Instant tick = rehearsal.tickFrom(first);
        while (!tick.isAfter(rehearsal.end())
                && (tick.isBefore(last) || !book.alarms().isEmpty())) {
            List<Verdict> verdicts = verdicts(tick);
            Step step = AlarmEngine.step(book, tick, verdicts, rehearsal.rules());
            events.addAll(step.events());
            book = step.book();
            tick = rehearsal.tickBefore(changeAfter(tick, verdicts), tick);
        }
        return events;
    }

    private List<Verdict> verdicts(Instant tick) {
        Optional<Bagging> on = head.baggingAt(tick);
        if (on.isEmpty()) {
            swept = null;
            return List.of();
        }
        List<Verdict> verdicts = swept(on.get(), tick).verdicts(tick);
        return together ? calls().left(tick, verdicts) : verdicts;
    }

    private Instant changeAfter(Instant tick, List<Verdict> verdicts) {
        Instant next = Rehearsal.earliest(
                baggingAfter(tick),
                rehearsal.silenceAfter(tick),
                rehearsal.knowledge().nextLessons(tick),
                together ? calls().changeAfter(tick) : Instant.MAX,
                rehearsal.end().plusMillis(1));
        for (Verdict verdict : verdicts) {
            Rule rule = Objects.requireNonNull(rules.get(verdict.key().rule()));
            next = Rehearsal.earliest(
                    next,
                    ifAfter(tick, verdict.since().plus(rule.onDelay())),
                    ifAfter(tick, verdict.since().plus(rule.offDelay())));
        }
        SweptBag bag = swept;
        return bag == null
                ? next
                : Rehearsal.earliest(next, sweptUntil.plusMillis(1), bag.changeAfter(tick, mouldStands()));
    }

    private static Instant ifAfter(Instant tick, Instant instant) {
        return instant.isAfter(tick) ? instant : Instant.MAX;
    }

    private Instant baggingAfter(Instant tick) {
        Instant next = Instant.MAX;
        for (Bagging bagging : head.baggings()) {
            next = Rehearsal.earliest(
                    next,
                    ifAfter(tick, bagging.putOn()),
                    bagging.takenOff().map(off -> ifAfter(tick, off)).orElse(Instant.MAX));
        }
        return next;
    }

    private boolean mouldStands() {
        return book.alarms().stream()
                .map(Alarm::key)
                .map(key -> rules.get(key.rule()))
                .anyMatch(rule -> rule != null && rule.kind() == RuleKind.BAG_MOULD);
    }

    private SweptBag swept(Bagging bagging, Instant tick) {
        SweptBag known = swept;
        Knowledge now = rehearsal.knowledge().lessonsAt(tick);
        if (known == null
                || !known.bagging().equals(bagging)
                || tick.isAfter(sweptUntil)
                || !now.taught().equals(believed.taught())) {
            believed = now;
            sweptUntil = Rehearsal.earliest(
                    tick.plus(STRETCH),
                    rehearsal.knowledge().nextLessons(tick),
                    bagging.takenOff().orElse(rehearsal.end()),
                    rehearsal.end());
            known = new SweptBag(rehearsal, head, bagging, rehearsal.at(sweptUntil, now));
            swept = known;
        }
        return known;
    }
}
