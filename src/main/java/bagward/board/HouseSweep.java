package bagward.board;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEngine;
import bagward.alarm.AlarmEvent;
import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.alarm.Step;
import bagward.alarm.TogetherMember;
import bagward.alarm.TogetherRule;
import bagward.alarm.Verdict;
import bagward.station.HouseId;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;

/**
 * The calls of a house for many of its bags over a rehearsal, worked out when they are asked for first. Safe for use by several
 * threads.
 */
final class HouseSweep {
    private final Rehearsal rehearsal;
    private final HouseId house;
    private final List<Rule> joint;
    private final Map<RuleId, Rule> rules = new HashMap<>();
    private final List<AlarmEvent> events = new ArrayList<>();
    private final NavigableMap<Instant, Set<RuleId>> calling = new TreeMap<>();
    private boolean swept;

    HouseSweep(Rehearsal rehearsal, HouseId house) {
        this.rehearsal = rehearsal;
        this.house = house;
        this.joint = HeldBag.rules(rehearsal.rules());
        joint.forEach(rule -> rules.put(rule.id(), rule));
    }

    private synchronized void sweepOnce() {
        if (!swept && !joint.isEmpty()) {
            sweep();
        }
        swept = true;
    }

    private void sweep() {
        SweptHouse bags = new SweptHouse(rehearsal, house, joint);
        AlarmBook book = AlarmBook.EMPTY;
        Set<RuleId> before = Set.of();
        for (Instant tick = rehearsal.begin(); !tick.isAfter(rehearsal.end()); tick = rehearsal.tickAfter(tick)) {
            bags.moveTo(tick);
            List<Verdict> verdicts = new ArrayList<>();
            Set<RuleId> now = new HashSet<>();
            for (Rule rule : joint) {
                List<TogetherMember> members = bags.members(rule, tick);
                if (!members.isEmpty()) {
                    Verdict verdict = judge(bags, rule, tick, members);
                    verdicts.add(verdict);
                    if (verdict.outcome() == Verdict.Outcome.HOLDS) {
                        now.add(rule.id());
                    }
                }
            }
            Step step = AlarmEngine.step(book, tick, verdicts, joint);
            events.addAll(step.events());
            book = step.book();
            if (!now.equals(before)) {
                calling.put(tick, now);
                before = now;
            }
        }
    }

    private Verdict judge(SweptHouse bags, Rule rule, Instant tick, List<TogetherMember> members) {
        return new TogetherRule(rule, house, tick).judge(members, () -> bags.recent(rule, tick));
    }

    /** All changes of alarms of the house, oldest first. */
    List<AlarmEvent> events() {
        sweepOnce();
        return List.copyOf(events);
    }

    /** What the rules say of a bag; where the house calls for it that is named. */
    List<Verdict> left(Instant tick, List<Verdict> verdicts) {
        sweepOnce();
        Map.Entry<Instant, Set<RuleId>> newest = calling.floorEntry(tick);
        if (newest == null || newest.getValue().isEmpty()) {
            return verdicts;
        }
        return verdicts.stream()
                .map(verdict -> {
                    Rule rule = rules.get(verdict.key().rule());
                    return rule != null && newest.getValue().contains(rule.id())
                            ? TogetherRule.covered(verdict, rule, rehearsal.nameOf(house))
                            : verdict;
                })
                .toList();
    }

    /** The first instant after another at which it calls by other rules; {@link Instant#MAX} if there is none. */
    Instant changeAfter(Instant tick) {
        sweepOnce();
        Instant next = calling.higherKey(tick);
        return next == null ? Instant.MAX : next;
    }
}
