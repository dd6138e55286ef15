package bagward.board;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmKey;
import bagward.alarm.Circumstances;
import bagward.alarm.Rule;
import bagward.alarm.RuleKind;
import bagward.alarm.SensorBatteryRule;
import bagward.alarm.SensorSilentRule;
import bagward.alarm.Subject;
import bagward.alarm.Verdict;
import bagward.bag.SensorLoan;
import bagward.climate.Reading;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.station.Sensor;
import bagward.units.Quantity;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Looks at the sensors. A spare one is missed only while it is lent. */
final class SensorAssessor {
    private final BoardInputs in;
    private final AlarmBook before;
    private final Map<SensorId, Verdict> wrongClocks;
    private final List<Verdict> verdicts = new ArrayList<>();
    private final Map<SensorId, Verdict> silent = new HashMap<>();

    /**
     * @param before alarms so far: they know when a sensor that was never heard was first missed
     * @param wrongClocks sensors that send, but with a wrong time
     */
    SensorAssessor(BoardInputs in, AlarmBook before, Map<SensorId, Verdict> wrongClocks) {
        this.wrongClocks = wrongClocks;
        this.in = in;
        this.before = before;
        in.station().sensors().forEach(this::judge);
        in.station().sensors().forEach(this::judgeBattery);
    }

    /** One verdict for each rule about sensors and each sensor that is to be heard. */
    List<Verdict> verdicts() {
        return verdicts;
    }

    /** The sensors that are silent, each with a verdict that says so. */
    Map<SensorId, Verdict> silent() {
        return silent;
    }

    /** The sensors in the order of the configuration. */
    List<SensorView> views() {
        return in.station().sensors().stream().map(this::view).toList();
    }

    private void judge(Sensor sensor) {
        Optional<SensorLoan> loan = loan(sensor);
        if (sensor.spare() && loan.isEmpty()) {
            return;
        }
        for (Rule general : rules(RuleKind.SENSOR_SILENT)) {
            Rule rule = general.at(Circumstances.of(sensor.house()));
            SensorSilentRule judge = new SensorSilentRule(rule, in.readings(), in.now());
            Instant expectedFrom = loan.map(SensorLoan::from).orElseGet(() -> missedFrom(judge, rule, sensor));
            Verdict verdict = said(sensor, judge.judge(sensor, expectedFrom));
            verdicts.add(byClock(sensor, verdict));
            if (verdict.outcome() == Verdict.Outcome.HOLDS && !verdict.since().isAfter(in.now())) {
                silent.put(sensor.id(), verdict);
            }
        }
    }

    /** A sensor that seems silent because its clock is off has an alarm for its clock already. */
    private Verdict byClock(Sensor sensor, Verdict verdict) {
        Verdict clock = wrongClocks.get(sensor.id());
        return clock != null && verdict.outcome() == Verdict.Outcome.HOLDS
                ? verdict.suppressedBy(clock.message())
                : verdict;
    }

    /** What is empty and silent has an alarm for its silence already. */
    private void judgeBattery(Sensor sensor) {
        for (Rule general : rules(RuleKind.SENSOR_BATTERY)) {
            Rule rule = general.at(Circumstances.of(sensor.house()));
            SensorBatteryRule.judge(rule, sensor, in.readings(), in.now())
                    .map(verdict -> silent.containsKey(sensor.id())
                            ? verdict.suppressedBy("sensor " + sensor.name() + " is silent")
                            : verdict)
                    .ifPresent(verdicts::add);
        }
    }

    private List<Rule> rules(RuleKind kind) {
        return in.rules().stream().filter(rule -> rule.kind() == kind).toList();
    }

    /** A sensor that was heard once is missed from then on, one that never was from when that was first noticed. */
    private Instant missedFrom(SensorSilentRule judge, Rule rule, Sensor sensor) {
        boolean everHeard = sensor.climateSeries().stream()
                .allMatch(series -> in.readings().newest(series, in.now()).isPresent());
        if (everHeard) {
            return Instant.EPOCH;
        }
        return before.find(new AlarmKey(rule.id(), new Subject.OfSensor(sensor.id())))
                .map(Alarm::since)
                .map(since -> since.minus(judge.patience(sensor)))
                .orElse(in.now());
    }

    private SensorView view(Sensor sensor) {
        Map<Quantity, Measure> newest = new EnumMap<>(Quantity.class);
        for (SeriesId series : sensor.series()) {
            Optional<Reading> reading = in.readings().newest(series, in.now());
            reading.ifPresent(r ->
                    newest.put(series.quantity(), Measures.measured(series.quantity(), r.value(), r.measuredAt())));
        }
        Optional<Instant> heardAt = newest.values().stream().map(Measure::asOf).max(Instant::compareTo);
        return new SensorView(
                sensor,
                newest,
                heardAt,
                silent.containsKey(sensor.id()),
                offlineSince(sensor),
                loan(sensor).map(SensorLoan::tag));
    }

    private Optional<Instant> offlineSince(Sensor sensor) {
        return Optional.ofNullable(in.system().offline().get(sensor.id()));
    }

    /** Why a sensor is silent, where its gateway said it: the gateway cannot reach it, or is away itself. */
    private Verdict said(Sensor sensor, Verdict verdict) {
        return offlineSince(sensor).isPresent() && verdict.outcome() == Verdict.Outcome.HOLDS
                ? verdict.adding("its gateway said that it is offline")
                : verdict;
    }

    private Optional<SensorLoan> loan(Sensor sensor) {
        return in.register().loans().stream()
                .filter(loan -> loan.sensor().equals(sensor.id()) && BagClimateSource.runs(loan, in.now()))
                .findFirst();
    }
}
