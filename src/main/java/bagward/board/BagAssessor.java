package bagward.board;

import bagward.alarm.Rule;
import bagward.alarm.RuleKind;
import bagward.alarm.Spell;
import bagward.alarm.Verdict;
import bagward.bag.BagBelief;
import bagward.bag.BagClimate;
import bagward.bag.Bagging;
import bagward.bag.Head;
import bagward.bag.Origin;
import bagward.bag.SensorLoan;
import bagward.climate.SeriesId;
import bagward.mould.Ahead;
import bagward.mould.Crop;
import bagward.mould.HarvestDays;
import bagward.mould.HeadCare;
import bagward.mould.HeatWatch;
import bagward.mould.MouldCourse;
import bagward.mould.PollinationNotes;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** Looks at one bag after the other: its climate is computed once and gives both its verdicts and its view. */
final class BagAssessor {
    private final BoardInputs in;
    private final BagClimateSource source;
    private final Suppression suppression;

    BagAssessor(BoardInputs in, BagClimateSource source, Suppression suppression) {
        this.in = in;
        this.source = source;
        this.suppression = suppression;
    }

    BagFinding look(Head head, Bagging bagging) {
        BagClimate climate = source.climate(head, bagging).bag();
        BagClimate sinceFirst = source.sinceFirst(head, bagging, climate);
        MouldCourse course = MouldCourse.of(sinceFirst, in.organisms());
        Optional<SensorLoan> loan = BagClimateSource.running(in.register().loans(), head, in.now());
        BagInsight insight = insight(head, bagging);
        HeadCare care = care(head, bagging, sinceFirst, insight.tonight().map(o -> course.ahead(o.climate())));
        Instant due = care.dates().due();
        JudgedBag best = new JudgedBag(
                head, in.crops().of(head).id(), bagging, climate, course, care.ahead(), due, insight.fit());
        List<Verdict> verdicts =
                verdicts(head, SeenBag.of(best, in.rules(), sinceFirst, in.organisms(), insight.tonight()));
        int cell = Measures.newestKnown(climate.temperature().middle(), in.now());
        BagView view = new BagView(
                head,
                bagging.material(),
                bagging.putOn(),
                due,
                loan.map(SensorLoan::sensor),
                measure(head, loan, climate, Quantity.TEMPERATURE),
                measure(head, loan, climate, Quantity.HUMIDITY),
                cell >= 0 && fresh(climate, cell) && climate.filmWetAt(cell),
                course.assessment(),
                dampFor(verdicts),
                insight,
                Optional.of(care),
                Optional.empty());
        return new BagFinding(view, new OneCause(in.rules(), in.now()).of(verdicts), together(head, bagging, climate));
    }

    private List<TogetherBag> together(Head head, Bagging bagging, BagClimate climate) {
        List<Rule> rules = HeldBag.rules(in.rules());
        if (rules.isEmpty()) {
            return List.of();
        }
        HeldBag held = new HeldBag(head, in.crops().of(head).id(), bagging, climate, source.place(head), rules);
        return rules.stream()
                .map(rule -> new TogetherBag(
                        rule.id(),
                        head.spot().house(),
                        held.member(rule, in.now(), suppression),
                        held.recent(rule, in.now())))
                .toList();
    }

    private BagInsight insight(Head head, Bagging bagging) {
        Optional<BagBelief> belief = source.material(bagging).map(known -> source.belief(known, head, bagging));
        return new BagInsight(
                belief, in.knowledge().of(head.tag(), bagging), belief.flatMap(known -> source.tonight(known, head)));
    }

    private HeadCare care(Head head, Bagging bagging, BagClimate sinceFirst, Optional<Ahead> ahead) {
        Crop crop = in.crops().of(head);
        ZoneId zone = in.station().zone();
        return new HeadCare(
                source.dates(head, bagging),
                HeatWatch.assess(sinceFirst.temperature().middle(), crop.heat()),
                PollinationNotes.of(sinceFirst, head.pollination()),
                HarvestDays.of(head.pollination().at(), crop.ripening(), zone),
                ahead);
    }

    private List<Verdict> verdicts(Head head, SeenBag bag) {
        Place place = source.place(head);
        return bag.verdicts(in.rules(), in.now(), in.station().zone()).stream()
                .map(verdict -> suppression.of(verdict, place))
                .toList();
    }

    private Optional<Measure> measure(Head head, Optional<SensorLoan> loan, BagClimate climate, Quantity quantity) {
        var banded = quantity == Quantity.HUMIDITY ? climate.humidity() : climate.temperature();
        int cell = Measures.newestKnown(banded.middle(), in.now());
        if (cell < 0) {
            return Optional.empty();
        }
        Origin origin = climate.originAt(cell);
        Instant held = climate.grid().at(cell);
        Optional<Instant> heard = origin == Origin.MEASURED
                ? loan.flatMap(l -> in.readings().newest(new SeriesId(l.sensor(), quantity), in.now()))
                        .map(reading -> reading.measuredAt())
                : source.place(head).heardAt(quantity);
        return Measures.newest(banded, cell, origin, heard.orElse(held));
    }

    private boolean fresh(BagClimate climate, int cell) {
        return !climate.grid().at(cell + 1).plus(Spell.FRESH).isBefore(in.now());
    }

    private Duration dampFor(List<Verdict> verdicts) {
        return verdicts.stream()
                .filter(v -> v.outcome() == Verdict.Outcome.HOLDS && kind(v) == RuleKind.BAG_DAMP)
                .map(v -> Duration.between(v.since(), in.now()))
                .max(Duration::compareTo)
                .orElse(Duration.ZERO);
    }

    private RuleKind kind(Verdict verdict) {
        return in.rules().stream()
                .filter(rule -> rule.id().equals(verdict.key().rule()))
                .map(Rule::kind)
                .findFirst()
                .orElseThrow();
    }
}
