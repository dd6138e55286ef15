package bagward.alarm;

import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.climate.SeriesId;
import bagward.station.Sensor;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Judges whether the battery of a sensor is low. Sensors that do not report it are left alone. */
public final class SensorBatteryRule {
    /** Batteries fall over weeks and jitter with the temperature: a week tells since when one is low. */
    private static final Duration LOOK_BACK = Duration.ofDays(7);

    private SensorBatteryRule() {}

    /**
     * Judges one sensor.
     *
     * @param rule of kind {@link RuleKind#SENSOR_BATTERY}
     * @param sensor the sensor
     * @param source readings
     * @param now the time to judge at
     * @return empty if the sensor does not report its battery, or did not within a week
     */
    public static Optional<Verdict> judge(Rule rule, Sensor sensor, ReadingSource source, Instant now) {
        SeriesId series = new SeriesId(sensor.id(), Quantity.BATTERY);
        List<Reading> readings = source.readings(series, now.minus(LOOK_BACK), now.plusMillis(1));
        return readings.isEmpty() ? Optional.empty() : Optional.of(judge(rule, sensor, readings));
    }

    private static Verdict judge(Rule rule, Sensor sensor, List<Reading> readings) {
        boolean low = false;
        Instant since = readings.get(0).measuredAt();
        for (Reading reading : readings) {
            boolean next = low ? reading.value() <= rule.limit() + rule.deadband() : reading.value() <= rule.limit();
            since = next == low ? since : reading.measuredAt();
            low = next;
        }
        double newest = readings.get(readings.size() - 1).value();
        return new Verdict(
                new AlarmKey(rule.id(), new Subject.OfSensor(sensor.id())),
                low ? Verdict.Outcome.HOLDS : Verdict.Outcome.CLEAR,
                since,
                newest,
                "battery of " + sensor.name() + " at " + Words.number(newest, 0) + " %, limit "
                        + Words.number(rule.limit(), 0) + " %");
    }
}
