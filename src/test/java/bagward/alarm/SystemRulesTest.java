package bagward.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.SensorId;
import bagward.station.HouseId;
import bagward.station.Sensor;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Alarms about the system itself, walked through minute by minute. */
class SystemRulesTest {
    private static final Instant START = Instant.parse("2026-05-04T06:00:00Z");
    private static final Sensor AIR = new Sensor(
            new SensorId("air"),
            "North, middle",
            new HouseId("north"),
            Optional.empty(),
            false,
            Set.of(Quantity.TEMPERATURE),
            Duration.ofMinutes(1));

    private AlarmBook book = AlarmBook.EMPTY;

    private static Rule rule(RuleKind kind, double limit, double deadband, int onMinutes) {
        return new Rule(
                new RuleId(kind.word()),
                kind.word(),
                kind,
                limit,
                deadband,
                Duration.ofMinutes(onMinutes),
                Duration.ZERO,
                Priority.HIGH,
                Script.CARD);
    }

    private static Instant minute(int minute) {
        return START.plusSeconds(60L * minute);
    }

    private static SystemState spool(double percent) {
        return new SystemState(Optional.empty(), percent, 100, Optional.empty(), Map.of());
    }

    private static SystemState free(double gigabytes) {
        return new SystemState(Optional.empty(), 0, gigabytes, Optional.empty(), Map.of());
    }

    private static SystemState clock(Duration ahead) {
        return new SystemState(Optional.empty(), 0, 100, Optional.empty(), Map.of(AIR.id(), ahead));
    }

    /** One tick; gives the phase of the only alarm. */
    private AlarmPhase at(int minute, Rule rule, SystemState state) {
        SystemRules rules = new SystemRules(state, book, minute(minute));
        List<Verdict> verdicts =
                rules.judge(rule).or(() -> rules.judgeClock(rule, AIR)).stream().toList();
        book = AlarmEngine.step(book, minute(minute), verdicts, List.of(rule)).book();
        return book.alarms().stream().map(Alarm::phase).findFirst().orElse(AlarmPhase.NORMAL);
    }

    private String message() {
        return book.alarms().get(0).message();
    }

    @Test
    void a_spool_that_fills_is_an_alarm_until_it_is_below_the_deadband() {
        Rule rule = rule(RuleKind.SPOOL_FILLING, 50, 10, 0);
        assertEquals(AlarmPhase.NORMAL, at(0, rule, spool(49.9)));
        assertEquals(AlarmPhase.UNACKNOWLEDGED, at(1, rule, spool(50)));
        assertTrue(message().contains("is 50 % full, limit 50 %"), message());
        assertEquals(AlarmPhase.UNACKNOWLEDGED, at(2, rule, spool(45)));
        assertEquals(minute(1), book.alarms().get(0).since());
        assertEquals(AlarmPhase.RETURNED_UNACKNOWLEDGED, at(3, rule, spool(39)));
        assertEquals(AlarmPhase.RETURNED_UNACKNOWLEDGED, at(4, rule, spool(45)), "that is not reached again");
        assertEquals(AlarmPhase.UNACKNOWLEDGED, at(5, rule, spool(51)));
    }

    @Test
    void a_disk_that_fills_is_an_alarm_until_it_is_above_the_deadband_and_an_unknown_one_changes_nothing() {
        Rule rule = rule(RuleKind.DISK_FILLING, 2, 0.5, 10);
        assertEquals(AlarmPhase.PENDING, at(0, rule, free(1.9)));
        assertEquals(AlarmPhase.PENDING, at(5, rule, free(Double.NaN)));
        assertEquals(AlarmPhase.UNACKNOWLEDGED, at(10, rule, free(2.4)));
        assertTrue(message().contains("2.4 GB free"), message());
        assertEquals(AlarmPhase.UNACKNOWLEDGED, at(11, rule, free(Double.NaN)));
        assertEquals(AlarmPhase.RETURNED_UNACKNOWLEDGED, at(12, rule, free(2.6)));
    }

    @Test
    void a_store_that_is_away_is_an_alarm_when_it_stays_away() {
        Rule rule = rule(RuleKind.STORE_AWAY, 5, 0, 0);
        SystemState away = new SystemState(Optional.of(START), 12, 100, Optional.empty(), Map.of());
        assertEquals(AlarmPhase.NORMAL, at(4, rule, away));
        assertEquals(AlarmPhase.UNACKNOWLEDGED, at(5, rule, away));
        assertTrue(message().contains("takes no readings for 5 min; they wait in the spool, 12 % full"), message());
        assertEquals(AlarmPhase.RETURNED_UNACKNOWLEDGED, at(6, rule, spool(0)));
    }

    @Test
    void a_clock_that_was_set_is_an_alarm_for_an_hour_if_it_was_set_far() {
        Rule rule = rule(RuleKind.STATION_CLOCK, 60, 0, 0);
        assertEquals(AlarmPhase.NORMAL, at(0, rule, jumped(Duration.ofSeconds(-59))));
        assertEquals(AlarmPhase.UNACKNOWLEDGED, at(1, rule, jumped(Duration.ofHours(-3))));
        assertEquals("it was set", message());
        assertEquals(AlarmPhase.UNACKNOWLEDGED, at(59, rule, jumped(Duration.ofHours(-3))));
        assertEquals(AlarmPhase.RETURNED_UNACKNOWLEDGED, at(60, rule, jumped(Duration.ofHours(-3))));
    }

    private static SystemState jumped(Duration by) {
        return new SystemState(
                Optional.empty(), 0, 100, Optional.of(new SystemState.ClockTrouble(START, by, "it was set")), Map.of());
    }

    @Test
    void the_clock_of_a_sensor_that_stays_off_is_an_alarm_and_a_backlog_that_ends_is_none() {
        Rule rule = rule(RuleKind.SENSOR_CLOCK, 10, 5, 30);
        assertEquals(AlarmPhase.PENDING, at(0, rule, clock(Duration.ofHours(-3))));
        assertEquals(AlarmPhase.NORMAL, at(20, rule, clock(Duration.ofSeconds(-1))), "the gateway has caught up");
        assertEquals(AlarmPhase.PENDING, at(30, rule, clock(Duration.ofHours(-3))));
        assertEquals(AlarmPhase.UNACKNOWLEDGED, at(60, rule, clock(Duration.ofHours(-3))));
        assertTrue(message().startsWith("the clock of North, middle is 3 h behind"), message());
        assertEquals(AlarmPhase.RETURNED_UNACKNOWLEDGED, at(61, rule, clock(Duration.ofSeconds(2))));
    }

    @Test
    void a_sensor_that_gives_no_times_has_no_alarm_of_its_clock() {
        Rule rule = rule(RuleKind.SENSOR_CLOCK, 10, 5, 0);
        assertEquals(AlarmPhase.NORMAL, at(0, rule, spool(0)));
    }
}
