package bagward.alarm;

import bagward.station.Sensor;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Judges how the system itself is: its store, spool, disk and clocks. */
public final class SystemRules {
    /** How long a jump of the station's clock is worth an alarm. */
    private static final Duration JUMP_COUNTS = Duration.ofHours(1);

    private static final double SECONDS_A_MINUTE = 60;

    private final SystemState state;
    private final AlarmBook before;
    private final Instant now;

    /**
     * @param state how the system is
     * @param before the alarms so far: they know since when a limit is exceeded
     * @param now the time to judge at
     */
    public SystemRules(SystemState state, AlarmBook before, Instant now) {
        this.state = state;
        this.before = before;
        this.now = now;
    }

    /** The verdict of a rule about the system as a whole; empty if it is about something else. */
    public Optional<Verdict> judge(Rule rule) {
        return switch (rule.kind()) {
            case STORE_AWAY -> Optional.of(storeAway(rule));
            case SPOOL_FILLING -> Optional.of(spoolFilling(rule));
            case DISK_FILLING -> Optional.of(diskFilling(rule));
            case STATION_CLOCK -> Optional.of(stationClock(rule));
            default -> Optional.empty();
        };
    }

    private Verdict storeAway(Rule rule) {
        Subject subject = new Subject.OfSystem("store");
        Duration away = state.storeAwaySince()
                .map(since -> Duration.between(since, now))
                .orElse(Duration.ZERO);
        String says = state.storeAwaySince().isEmpty()
                ? "the store takes readings"
                : "the store takes no readings for " + Words.duration(away) + "; they wait in the spool, "
                        + Words.number(state.spoolPercent(), 0) + " % full";
        double minutes = state.storeAwaySince().isEmpty() ? -1 : away.toSeconds() / SECONDS_A_MINUTE;
        return level(rule, subject).atLeast(minutes, says);
    }

    private Verdict spoolFilling(Rule rule) {
        Subject subject = new Subject.OfSystem("spool");
        String says = "the spool, in which readings wait for their store, is " + Words.number(state.spoolPercent(), 0)
                + " % full, limit " + Words.number(rule.limit(), 0) + " %";
        return level(rule, subject).atLeast(state.spoolPercent(), says);
    }

    private Verdict diskFilling(Rule rule) {
        Subject subject = new Subject.OfSystem("disk");
        if (Double.isNaN(state.freeGigabytes())) {
            AlarmKey key = new AlarmKey(rule.id(), subject);
            return new Verdict(key, Verdict.Outcome.UNKNOWN, now, Double.NaN, "free space on the disk is not known");
        }
        String says = Words.number(state.freeGigabytes(), 1) + " GB free on the disk of the station's data, limit "
                + Words.number(rule.limit(), 1) + " GB";
        return level(rule, subject).atMost(state.freeGigabytes(), says);
    }

    private Verdict stationClock(Rule rule) {
        Subject subject = new Subject.OfSystem("clock");
        Optional<SystemState.ClockTrouble> trouble =
                state.clock().filter(t -> now.isBefore(t.since().plus(JUMP_COUNTS)));
        double seconds = trouble.map(t -> t.by().abs().toMillis() / 1000.0).orElse(0.0);
        String says = trouble.map(SystemState.ClockTrouble::says).orElse("the station's clock runs evenly");
        return level(rule, subject).atLeast(seconds, says);
    }

    /** The verdict on the clock of a sensor; empty if nothing is known of it, or the rule is about something else. */
    public Optional<Verdict> judgeClock(Rule rule, Sensor sensor) {
        if (rule.kind() != RuleKind.SENSOR_CLOCK) {
            return Optional.empty();
        }
        return Optional.ofNullable(state.sensorClocks().get(sensor.id())).map(ahead -> {
            Subject subject = new Subject.OfSensor(sensor.id());
            String says = "the clock of " + sensor.name() + " is " + Words.duration(ahead.abs())
                    + (ahead.isNegative() ? " behind, or its messages come so late" : " ahead");
            return level(rule, subject).atLeast(ahead.abs().toSeconds() / SECONDS_A_MINUTE, says);
        });
    }

    private Level level(Rule rule, Subject subject) {
        return new Level(rule, subject, before, now);
    }
}
