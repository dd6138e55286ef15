package bagward.board;

import bagward.alarm.AlarmKey;
import bagward.alarm.Circumstances;
import bagward.alarm.HeldSpan;
import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.alarm.RuleKind;
import bagward.alarm.Spell;
import bagward.alarm.SpellLine;
import bagward.alarm.Subject;
import bagward.alarm.TogetherMember;
import bagward.alarm.TogetherRule;
import bagward.alarm.Verdict;
import bagward.bag.BagClimate;
import bagward.bag.Bagging;
import bagward.bag.CropId;
import bagward.bag.Head;
import bagward.climate.RegularSeries;
import bagward.station.Sensor;
import bagward.units.Quantity;
import java.time.Instant;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** One bag as the rules see it by which houses call: its spells against its own limits, over its whole time. */
final class HeldBag {
    private final Head head;
    private final Bagging bagging;
    private final Map<Quantity, List<Sensor>> sources;
    private final BitSet measured;
    private final Map<RuleId, Held> held = new HashMap<>();

    private record Held(Rule there, RegularSeries series, SpellLine spells) {}

    /**
     * A bag with the climate inside it.
     *
     * @param crop of the head
     * @param climate since it was put on
     * @param place where it is
     * @param rules those by which houses call
     */
    HeldBag(Head head, CropId crop, Bagging bagging, BagClimate climate, Place place, List<Rule> rules) {
        this.head = head;
        this.bagging = bagging;
        this.sources = place.sources();
        this.measured = climate.measured();
        for (Rule rule : rules) {
            Rule there =
                    rule.at(new Circumstances(head.spot().house(), Optional.of(bagging.material()), Optional.of(crop)));
            BagClimate seen = climate.at(rule.actsOn());
            RegularSeries series = (rule.kind() == RuleKind.BAG_HOT ? seen.temperature() : seen.humidity()).middle();
            held.put(rule.id(), new Held(there, series, new SpellLine(series, there.limit(), there.deadband())));
        }
    }

    /** A bag with its climate up to the time of the inputs. */
    static HeldBag of(BoardInputs in, Head head, Bagging bagging, List<Rule> rules) {
        BagClimateSource source = new BagClimateSource(in, bagging.putOn(), in.now());
        BagClimate climate = source.climate(head, bagging).bag();
        return new HeldBag(head, in.crops().of(head).id(), bagging, climate, source.place(head), rules);
    }

    /** The rules by which houses call. */
    static List<Rule> rules(List<Rule> all) {
        return all.stream().filter(rule -> rule.togetherFrom().isPresent()).toList();
    }

    /** As a rule sees it at an instant at which it is on. */
    TogetherMember member(Rule rule, Instant now, Suppression suppression) {
        Held seen = seenBy(rule);
        Spell spell = seen.spells.at(now);
        AlarmKey key = new AlarmKey(rule.id(), new Subject.Bag(head.tag()));
        Verdict verdict = suppression.of(new Verdict(key, spell.outcome(), spell.since(), spell.value(), ""), sources);
        return TogetherMember.of(head.tag(), seen.there, verdict, seen.series, seen.spells, measured, now);
    }

    /** The times within {@link TogetherRule#MEMORY} for which it met a rule while it was on. */
    List<HeldSpan> recent(Rule rule, Instant now) {
        Instant end = bagging.takenOff().filter(off -> !off.isAfter(now)).orElse(now.plusMillis(1));
        Instant from = now.minus(TogetherRule.MEMORY);
        return from.isBefore(end) ? seenBy(rule).spells.within(from, end) : List.of();
    }

    private Held seenBy(Rule rule) {
        return Objects.requireNonNull(held.get(rule.id()), "a rule that was not named before");
    }
}
