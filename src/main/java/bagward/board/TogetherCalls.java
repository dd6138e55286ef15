package bagward.board;

import bagward.alarm.AlarmKey;
import bagward.alarm.HeldSpan;
import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.alarm.Subject;
import bagward.alarm.TogetherMember;
import bagward.alarm.TogetherRule;
import bagward.alarm.Verdict;
import bagward.bag.Bagging;
import bagward.bag.Head;
import bagward.bag.TagCode;
import bagward.station.House;
import bagward.station.HouseId;
import bagward.station.Station;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The calls of houses for many of their bags at one time, and what becomes of those of the bags. */
final class TogetherCalls {
    private final BoardInputs in;
    private final Map<RuleId, Rule> rules = new HashMap<>();
    private final List<TogetherBag> bags;
    private final List<Verdict> verdicts = new ArrayList<>();
    private final Map<AlarmKey, List<TagCode>> concerned = new HashMap<>();

    /** @param findings of all bags that are on, in walking order */
    TogetherCalls(BoardInputs in, List<BagFinding> findings) {
        this.in = in;
        this.bags = findings.stream()
                .flatMap(finding -> finding.together().stream())
                .toList();
        for (Rule rule : HeldBag.rules(in.rules())) {
            rules.put(rule.id(), rule);
            in.station().houses().forEach(house -> judge(rule, house.id()));
        }
    }

    private void judge(Rule rule, HouseId house) {
        List<TogetherBag> there = bags.stream()
                .filter(bag -> bag.rule().equals(rule.id()) && bag.house().equals(house))
                .toList();
        if (there.isEmpty()) {
            return;
        }
        List<TogetherMember> members = there.stream().map(TogetherBag::member).toList();
        Verdict verdict = new TogetherRule(rule, house, in.now())
                .judge(
                        members,
                        () -> Stream.concat(
                                        there.stream().flatMap(bag -> bag.recent().stream()),
                                        ofBagsThatCameOff(rule, house))
                                .toList());
        verdicts.add(verdict);
        if (verdict.outcome() == Verdict.Outcome.HOLDS) {
            concerned.put(
                    verdict.key(),
                    members.stream()
                            .filter(member -> member.verdict().met())
                            .map(TogetherMember::tag)
                            .toList());
        }
    }

    private Stream<HeldSpan> ofBagsThatCameOff(Rule rule, HouseId house) {
        return in.register().heads().stream()
                .filter(head -> head.spot().house().equals(house))
                .flatMap(head -> head.baggings().stream()
                        .filter(bagging -> cameOffOfLate(bagging, in.now()))
                        .flatMap(bagging -> recent(rule, head, bagging).stream()));
    }

    private List<HeldSpan> recent(Rule rule, Head head, Bagging bagging) {
        BoardInputs then = in.until(bagging.takenOff().orElse(in.now()));
        return HeldBag.of(then, head, bagging, List.of(rule)).recent(rule, in.now());
    }

    /** Whether a bag came off so lately that it still counts. */
    static boolean cameOffOfLate(Bagging bagging, Instant now) {
        return bagging.takenOff()
                .filter(off -> !off.isAfter(now) && off.isAfter(now.minus(TogetherRule.MEMORY)))
                .isPresent();
    }

    /** One verdict for each rule by which houses call and each house with bags. */
    List<Verdict> verdicts() {
        return verdicts;
    }

    /** The bags that an alarm of a house is about. */
    Map<AlarmKey, List<TagCode>> concerned() {
        return concerned;
    }

    /** What the rules say of a bag; where its house calls for it that is named. */
    List<Verdict> left(BagFinding finding) {
        HouseId house = finding.view().head().spot().house();
        return rules.isEmpty()
                ? finding.verdicts()
                : finding.verdicts().stream()
                        .map(verdict -> left(house, verdict))
                        .toList();
    }

    private Verdict left(HouseId house, Verdict verdict) {
        RuleId id = verdict.key().rule();
        Rule rule = rules.get(id);
        return rule != null && concerned.containsKey(new AlarmKey(id, new Subject.InHouse(house)))
                ? TogetherRule.covered(verdict, rule, nameOf(in.station(), house))
                : verdict;
    }

    /** Name of a house. */
    static String nameOf(Station station, HouseId house) {
        return station.findHouse(house).map(House::name).orElse(house.value());
    }
}
