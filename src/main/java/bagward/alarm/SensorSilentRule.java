package bagward.alarm;

import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.climate.SeriesId;
import bagward.climate.TimedValues;
import bagward.station.Sensor;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Judges whether a sensor is silent: no reading of one of its quantities for the rule's limit times the expected
 * interval. One dead quantity is enough, since what depends on it is blind.
 */
public final class SensorSilentRule {
    private final Rule rule;
    private final ReadingSource readings;
    private final Instant now;

    /**
     * @param rule of kind {@link RuleKind#SENSOR_SILENT}
     * @param readings all readings up to now
     * @param now the time to judge at
     */
    public SensorSilentRule(Rule rule, ReadingSource readings, Instant now) {
        this.rule = rule;
        this.readings = readings;
        this.now = now;
    }

    /**
     * Judges one sensor.
     *
     * @param sensor the sensor
     * @param expectedFrom silence before this does not count: when a spare was lent, or when a sensor that was never
     *     heard was first missed
     */
    public Verdict judge(Sensor sensor, Instant expectedFrom) {
        Duration patience = patience(sensor);
        List<Heard> heard = sensor.climateSeries().stream()
                .map(series -> heard(series, patience, expectedFrom))
                .toList();
        List<Heard> silent = heard.stream().filter(Heard::silent).toList();
        Instant since = silent.isEmpty()
                ? heard.stream().map(Heard::since).max(Instant::compareTo).orElse(expectedFrom)
                : silent.stream().map(Heard::since).min(Instant::compareTo).orElse(expectedFrom);
        Instant oldest = (silent.isEmpty() ? heard : silent)
                .stream()
                        .map(h -> h.newest().orElse(expectedFrom))
                        .min(Instant::compareTo)
                        .orElse(expectedFrom);
        Duration quiet = Duration.between(oldest, now);
        return new Verdict(
                new AlarmKey(rule.id(), new Subject.OfSensor(sensor.id())),
                silent.isEmpty() ? Verdict.Outcome.CLEAR : Verdict.Outcome.HOLDS,
                since,
                (double) quiet.toSeconds() / sensor.expectedEvery().toSeconds(),
                says(sensor, silent, quiet));
    }

    /** How long a sensor may be quiet before it counts as silent. */
    public Duration patience(Sensor sensor) {
        return Duration.ofSeconds(
                Math.round(rule.limit() * sensor.expectedEvery().toSeconds()));
    }

    private Heard heard(SeriesId series, Duration patience, Instant expectedFrom) {
        Optional<Instant> newest = readings.newest(series, now).map(Reading::measuredAt);
        Instant from = newest.filter(n -> n.isAfter(expectedFrom)).orElse(expectedFrom);
        if (newest.isEmpty() || from.plus(patience).isBefore(now)) {
            return new Heard(series, newest, true, from.plus(patience));
        }
        return new Heard(series, newest, false, backSince(series, patience, from));
    }

    /** Since when readings have come without a silence, as far back as the off-delay asks. */
    private Instant backSince(SeriesId series, Duration patience, Instant newest) {
        TimedValues recent = readings.values(series, now.minus(rule.offDelay()).minus(patience), now.plusMillis(1));
        long first = newest.toEpochMilli();
        for (int i = recent.size() - 1; i >= 0; i--) {
            long at = recent.millisAt(i);
            if (at + patience.toMillis() < first) {
                break;
            }
            first = Math.min(first, at);
        }
        return first < newest.toEpochMilli() ? Instant.ofEpochMilli(first) : newest;
    }

    private static String says(Sensor sensor, List<Heard> silent, Duration quiet) {
        String every = "expected every " + Words.duration(sensor.expectedEvery());
        if (silent.isEmpty()) {
            return "heard " + Words.duration(quiet) + " ago, " + every;
        }
        String what = silent.stream().map(h -> h.series().quantity().word()).collect(Collectors.joining(" and "));
        boolean never = silent.stream().allMatch(h -> h.newest().isEmpty());
        return "no " + what + " from " + sensor.name() + (never ? " so far, " : " for " + Words.duration(quiet) + ", ")
                + every;
    }

    private record Heard(SeriesId series, Optional<Instant> newest, boolean silent, Instant since) {}
}
