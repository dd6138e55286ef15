package bagward.board;

import bagward.alarm.HeldSpan;
import bagward.alarm.Rule;
import bagward.alarm.TogetherMember;
import bagward.alarm.TogetherRule;
import bagward.bag.Bagging;
import bagward.bag.Head;
import bagward.station.HouseId;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/** The bags of a house along a rehearsal: those that are on, and those that came off of late. Used by one thread. */
final class SweptHouse {
    /** A climate is computed for so long at a time: a bag that was forgotten costs no more than several others. */
    private static final Duration STRETCH = Duration.ofDays(7);

    private final Rehearsal rehearsal;
    private final List<Rule> rules;
    private final Deque<On> toCome = new ArrayDeque<>();
    private final List<Swept> there = new ArrayList<>();
    private Knowledge believed = Knowledge.NONE;

    /** A bag on a head. */
    private record On(Head head, Bagging bagging) {
        Instant putOn() {
            return bagging.putOn();
        }

        /** Whether it came off so long ago that it counts no more. */
        boolean forgottenAt(Instant tick) {
            return bagging.takenOff()
                    .filter(off -> !off.isAfter(tick.minus(TogetherRule.MEMORY)))
                    .isPresent();
        }
    }

    /** A bag with its spells until an instant. */
    private record Swept(On on, HeldBag bag, Instant until) {}

    /** @param rules those by which houses call */
    SweptHouse(Rehearsal rehearsal, HouseId house, List<Rule> rules) {
        this.rehearsal = rehearsal;
        this.rules = rules;
        rehearsal.register().heads().stream()
                .filter(head -> head.spot().house().equals(house))
                .flatMap(head -> head.baggings().stream().map(bagging -> new On(head, bagging)))
                .filter(on -> on.putOn().isBefore(rehearsal.end()) && !on.forgottenAt(rehearsal.begin()))
                .sorted(Comparator.comparing(On::putOn))
                .forEach(toCome::add);
    }

    /** Goes on to an instant, never back. */
    void moveTo(Instant tick) {
        there.removeIf(swept -> swept.on.forgottenAt(tick));
        Knowledge known = rehearsal.knowledge().lessonsAt(tick);
        boolean taught = !known.taught().equals(believed.taught());
        believed = known;
        there.replaceAll(swept ->
                taught || (swept.on.bagging.onAt(tick) && tick.isAfter(swept.until)) ? swept(swept.on, tick) : swept);
        while (!toCome.isEmpty() && !toCome.peek().putOn().isAfter(tick)) {
            On on = toCome.remove();
            if (!on.forgottenAt(tick)) {
                there.add(swept(on, tick));
            }
        }
    }

    private Swept swept(On on, Instant tick) {
        Instant until = Rehearsal.earliest(
                tick.plus(STRETCH),
                rehearsal.knowledge().nextLessons(tick),
                on.bagging.takenOff().orElse(rehearsal.end()),
                rehearsal.end());
        return new Swept(on, HeldBag.of(rehearsal.at(until, believed), on.head, on.bagging, rules), until);
    }

    /** The bags that are on at an instant, as a rule sees them. */
    List<TogetherMember> members(Rule rule, Instant tick) {
        Suppression suppression = rehearsal.suppressionAt(tick);
        return there.stream()
                .filter(swept -> swept.on.bagging.onAt(tick))
                .map(swept -> swept.bag.member(rule, tick, suppression))
                .toList();
    }

    /** The times of late for which they met a rule. */
    List<HeldSpan> recent(Rule rule, Instant tick) {
        return there.stream()
                .flatMap(swept -> swept.bag.recent(rule, tick).stream())
                .toList();
    }
}
