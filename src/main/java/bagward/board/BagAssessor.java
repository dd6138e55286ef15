package bagward.board;

import bagward.alarm.BagDampRule;
import bagward.alarm.BagDueRule;
import bagward.alarm.BagHotRule;
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
import bagward.mould.MouldRisk;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
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
        Instant due = DueTime.of(
                bagging.putOn(), source.material(bagging), in.station().zone());
        List<Verdict> verdicts = verdicts(head, bagging, climate, due);
        Optional<SensorLoan> loan = BagClimateSource.running(in.register().loans(), head, in.now());
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
                MouldRisk.assess(climate, in.organisms()),
                dampFor(verdicts),
                insight(head, bagging, loan),
                Optional.empty());
        return new BagFinding(view, verdicts);
    }

    private BagInsight insight(Head head, Bagging bagging, Optional<SensorLoan> loan) {
        Optional<BagBelief> belief = source.material(bagging).map(known -> source.belief(known, head, bagging));
        Optional<Taught> taught = in.knowledge().of(head.tag(), bagging);
        return new BagInsight(
                belief,
                taught.flatMap(Taught::lesson).isPresent(),
                loan.isPresent() ? taught.flatMap(Taught::fit) : Optional.empty(),
                belief.flatMap(known -> source.tonight(known, head)));
    }

    private List<Verdict> verdicts(Head head, Bagging bagging, BagClimate climate, Instant due) {
        List<Verdict> verdicts = new ArrayList<>();
        for (Rule general : in.rules()) {
            Rule rule = general.at(head.spot().house(), Optional.of(bagging.material()));
            switch (rule.kind()) {
                case BAG_DAMP ->
                    verdicts.add(
                            suppression.of(BagDampRule.judge(rule, head.tag(), climate, in.now()), source.place(head)));
                case BAG_HOT ->
                    verdicts.add(
                            suppression.of(BagHotRule.judge(rule, head.tag(), climate, in.now()), source.place(head)));
                case BAG_DUE -> verdicts.add(BagDueRule.judge(rule, head.tag(), bagging.putOn(), due, in.now()));
                case SENSOR_SILENT,
                        SENSOR_BATTERY,
                        SENSOR_CLOCK,
                        STORE_AWAY,
                        SPOOL_FILLING,
                        DISK_FILLING,
                        STATION_CLOCK -> {}
            }
        }
        return verdicts;
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
