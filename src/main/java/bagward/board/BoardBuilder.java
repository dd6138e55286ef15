package bagward.board;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmBook;
import bagward.alarm.Priority;
import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.alarm.Subject;
import bagward.alarm.Verdict;
import bagward.bag.BagClimate;
import bagward.bag.Bagging;
import bagward.bag.Head;
import bagward.mould.MouldReport;
import bagward.mould.MouldRisk;
import bagward.mould.WetSpells;
import bagward.station.Spot;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Builds the board in two halves with the alarm engine between them: {@link #assess} computes the climate of every bag
 * once and gives verdicts and views, {@link #board} puts the moved alarms on it. Both are functions of their arguments.
 */
public final class BoardBuilder {
    /** Houses without bags are looked at this far back for their newest value. */
    private static final Duration LOOK_BACK = Duration.ofHours(3);

    private BoardBuilder() {}

    /**
     * Looks at everything.
     *
     * @param in what the board is a function of
     * @param before the alarms so far, for when a sensor that was never heard was first missed
     */
    public static Assessment assess(BoardInputs in, AlarmBook before) {
        List<Head> heads = in.register().baggedAt(in.now()).stream()
                .sorted(new WalkingOrder(in.station()).heads())
                .toList();
        Instant from = heads.stream()
                .map(head -> head.baggings().get(0).putOn())
                .min(Comparator.naturalOrder())
                .filter(oldest -> oldest.isBefore(in.now().minus(LOOK_BACK)))
                .orElse(in.now().minus(LOOK_BACK));
        BagClimateSource source = new BagClimateSource(in, from, in.now());
        SystemAssessor system = new SystemAssessor(in, before);
        SensorAssessor sensors = new SensorAssessor(in, before, system.wrongClocks());
        Suppression suppression = new Suppression(sensors.silent().keySet());
        BagAssessor bags = new BagAssessor(in, source, suppression);
        List<Verdict> verdicts = new ArrayList<>(system.verdicts());
        verdicts.addAll(sensors.verdicts());
        List<BagFinding> findings = heads.stream()
                .flatMap(head -> head.baggingAt(in.now()).map(bagging -> bags.look(head, bagging)).stream())
                .toList();
        TogetherCalls together = new TogetherCalls(in, findings);
        findings.forEach(finding -> verdicts.addAll(together.left(finding)));
        verdicts.addAll(together.verdicts());
        HouseAssessor houses = new HouseAssessor(in, source.places());
        DryingAssessor drying = new DryingAssessor(in, suppression);
        List<DryingView> dryingViews = new ArrayList<>();
        in.station().drying().stream().map(drying::look).forEach(seen -> {
            dryingViews.add(seen.view());
            verdicts.addAll(seen.verdicts());
        });
        return new Assessment(
                in.station().growing().stream().map(houses::look).toList(),
                findings.stream().map(BagFinding::view).toList(),
                sensors.views(),
                dryingViews,
                verdicts,
                together.concerned());
    }

    /**
     * The board of an assessment.
     *
     * @param in what the assessment was made of
     * @param assessment all but the alarms
     * @param after the alarms after the engine's step, or after a person's act
     */
    public static Board board(BoardInputs in, Assessment assessment, AlarmBook after) {
        List<AlarmView> listed =
                alarms(in, assessment, after, alarm -> alarm.phase().listed());
        List<AlarmView> aside =
                alarms(in, assessment, after, alarm -> alarm.phase().setAside());
        return new Board(
                in.now(),
                in.station().name(),
                in.station().zone(),
                assessment.houses(),
                marked(assessment.bags(), listed),
                assessment.sensors(),
                listed,
                aside,
                assessment.drying(),
                assessment.sensors().stream()
                        .map(SensorView::heardAt)
                        .flatMap(Optional::stream)
                        .max(Comparator.naturalOrder()));
    }

    /**
     * The climate around and inside one bag from when it was put on until it came off or until now; of a bag that was on
     * for more than 21 days the last 21.
     */
    public static BaggedClimate climate(BoardInputs in, Head head, Bagging bagging) {
        Instant until = bagging.takenOff().filter(off -> off.isBefore(in.now())).orElse(in.now());
        return new BagClimateSource(in, bagging.putOn(), until).climate(head, bagging);
    }

    /** What every organism makes of a head from its first bag up to one of them, and the wet spells. */
    public static MouldReport mould(BoardInputs in, Head head, Bagging last) {
        Instant until = last.takenOff().filter(off -> off.isBefore(in.now())).orElse(in.now());
        BagClimateSource source =
                new BagClimateSource(in, head.baggings().get(0).putOn(), until);
        BagClimate inLast = source.climate(head, last).bag();
        return MouldRisk.report(source.sinceFirst(head, last, inLast), in.organisms(), WetSpells.USUAL_BREAK);
    }

    private static List<BagView> marked(List<BagView> bags, List<AlarmView> listed) {
        Map<Subject, Priority> worst = new HashMap<>();
        for (AlarmView view : listed) {
            subjects(view)
                    .forEach(subject -> worst.merge(
                            subject, view.rule().priority(), BinaryOperator.maxBy(Comparator.naturalOrder())));
        }
        return bags.stream()
                .map(bag -> Optional.ofNullable(
                                worst.get(new Subject.Bag(bag.head().tag())))
                        .map(bag::withWorst)
                        .orElse(bag))
                .toList();
    }

    /** What an alarm is about, with the bags that a house calls for. */
    private static Stream<Subject> subjects(AlarmView view) {
        return Stream.concat(
                Stream.of(view.alarm().key().subject()), view.bags().stream().map(Subject.Bag::new));
    }

    private static List<AlarmView> alarms(
            BoardInputs in, Assessment assessment, AlarmBook book, Predicate<Alarm> which) {
        Map<RuleId, Rule> rules = new HashMap<>();
        in.rules().forEach(rule -> rules.put(rule.id(), rule));
        WalkingOrder order = new WalkingOrder(in.station());
        return book.alarms().stream()
                .filter(which)
                .flatMap(alarm -> Optional.ofNullable(rules.get(alarm.key().rule()))
                        .map(rule -> new AlarmView(
                                alarm,
                                rule,
                                spot(in, alarm),
                                assessment.concerned().getOrDefault(alarm.key(), List.of())))
                        .stream())
                .sorted(Comparator.comparing((AlarmView view) -> view.rule().priority())
                        .reversed()
                        .thenComparingLong(view -> order.rank(view.alarm().key().subject(), in.register()))
                        .thenComparing(view -> view.alarm().key()))
                .toList();
    }

    private static Optional<Spot> spot(BoardInputs in, Alarm alarm) {
        return alarm.key().subject() instanceof Subject.Bag bag
                ? in.register().find(bag.tag()).map(Head::spot)
                : Optional.empty();
    }
}
