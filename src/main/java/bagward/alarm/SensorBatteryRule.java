package bagward.alarm;

import bagward.climate.ReadingSource;
import bagward.climate.SeriesId;
import bagward.climate.TimedValues;
import bagward.station.Sensor;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
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
        TimedValues values = source.values(series, now.minus(LOOK_BACK), now.plusMillis(1));
        return values.size() == 0 ? Optional.empty() : Optional.of(judge(rule, sensor, values));
    }

    private static Verdict judge(Rule rule, Sensor sensor, TimedValues values) {
        boolean low = false;
        int since = 0;
        for (int i = 0; i < values.size(); i++) {
            double percent = values.valueAt(i);
            boolean next = low ? percent <= rule.limit() + rule.deadband() : percent <= rule.limit();
            since = next == low ? since : i;
            low = next;
        }
        double newest = values.valueAt(values.size() - 1);
        return new Verdict(
                new AlarmKey(rule.id(), new Subject.OfSensor(sensor.id())),
                low ? Verdict.Outcome.HOLDS : Verdict.Outcome.CLEAR,
                Instant.ofEpochMilli(values.millisAt(since)),
                newest,
                "battery of " + sensor.name() + " at " + Words.number(newest, 0) + " %, limit "
                        + Words.number(rule.limit(), 0) + " %");
    }
}
