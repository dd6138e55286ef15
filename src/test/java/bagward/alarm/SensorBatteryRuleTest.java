package bagward.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.FixedReadings;
import bagward.climate.Reading;
import bagward.climate.SeriesId;
import bagward.station.Sensor;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Limit 15 %, deadband 10 %; the battery is reported every hour. */
class SensorBatteryRuleTest {
    private static final Instant START = Instant.parse("2026-03-28T18:00:00Z");
    private static final Sensor SENSOR = NorthPost.measuring(Quantity.TEMPERATURE, Quantity.BATTERY);
    private static final Rule RULE = new Rule(
            new RuleId("battery"),
            "Battery low",
            RuleKind.SENSOR_BATTERY,
            15,
            10,
            Duration.ZERO,
            Duration.ZERO,
            Priority.LOW,
            Script.CARD);

    @Test
    void a_full_battery_is_clear() {
        assertEquals(Verdict.Outcome.CLEAR, judged(90, 89, 88).orElseThrow().outcome());
    }

    @Test
    void a_battery_that_reaches_the_limit_is_low_from_then_on_and_says_so_in_numbers() {
        Verdict verdict = judged(17, 15, 16, 14).orElseThrow();
        assertEquals(Verdict.Outcome.HOLDS, verdict.outcome());
        assertEquals(hour(1), verdict.since());
        assertEquals("battery of North post at 14 %, limit 15 %", verdict.message());
    }

    @Test
    void warmth_that_lifts_it_within_the_deadband_does_not_end_it() {
        assertEquals(hour(1), judged(17, 15, 25, 20).orElseThrow().since());
        assertEquals(Verdict.Outcome.HOLDS, judged(17, 15, 25, 20).orElseThrow().outcome());
    }

    @Test
    void a_new_battery_ends_it() {
        Verdict verdict = judged(15, 14, 98, 97).orElseThrow();
        assertEquals(Verdict.Outcome.CLEAR, verdict.outcome());
        assertEquals(hour(2), verdict.since());
    }

    @Test
    void a_sensor_that_does_not_report_it_is_left_alone() {
        assertTrue(judged().isEmpty());
    }

    @Test
    void the_order_of_arrival_does_not_matter() {
        List<Reading> late = new ArrayList<>(readings(17, 15, 25, 20));
        java.util.Collections.reverse(late);
        assertEquals(judged(17, 15, 25, 20), SensorBatteryRule.judge(RULE, SENSOR, new FixedReadings(late), hour(4)));
    }

    private static Optional<Verdict> judged(double... percent) {
        return SensorBatteryRule.judge(RULE, SENSOR, new FixedReadings(readings(percent)), hour(percent.length));
    }

    private static List<Reading> readings(double... percent) {
        SeriesId series = new SeriesId(SENSOR.id(), Quantity.BATTERY);
        return IntStream.range(0, percent.length)
                .mapToObj(i -> Reading.of(series, hour(i), percent[i]))
                .toList();
    }

    private static Instant hour(int hour) {
        return START.plus(Duration.ofHours(hour));
    }
}
