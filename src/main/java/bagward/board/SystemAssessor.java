package bagward.board;

import bagward.alarm.AlarmBook;
import bagward.alarm.Rule;
import bagward.alarm.SystemRules;
import bagward.alarm.Verdict;
import bagward.climate.SensorId;
import bagward.station.Sensor;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Looks at the system itself, and at the clocks of the sensors. */
final class SystemAssessor {
    private final List<Verdict> verdicts = new ArrayList<>();
    private final Map<SensorId, Verdict> wrongClocks = new HashMap<>();

    /** @param before alarms so far: they know since when a limit is exceeded */
    SystemAssessor(BoardInputs in, AlarmBook before) {
        SystemRules rules = new SystemRules(in.system(), before, in.now());
        for (Rule rule : in.rules()) {
            rules.judge(rule).ifPresent(verdicts::add);
            in.station().sensors().forEach(sensor -> judgeClock(rules, rule, sensor));
        }
    }

    private void judgeClock(SystemRules rules, Rule rule, Sensor sensor) {
        rules.judgeClock(rule, sensor).ifPresent(verdict -> {
            verdicts.add(verdict);
            if (verdict.outcome() == Verdict.Outcome.HOLDS) {
                wrongClocks.put(sensor.id(), verdict);
            }
        });
    }

    /** One verdict for each rule about the system, and for each rule about clocks and sensor of which enough is known. */
    List<Verdict> verdicts() {
        return verdicts;
    }

    /** The sensors whose clock is off, each with a verdict that says so. */
    Map<SensorId, Verdict> wrongClocks() {
        return wrongClocks;
    }
}
