package bagward.collector;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.climate.SensorId;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What messages tell of the clock of their sensor. */
class SensorClocksTest {
    private static final SensorId AIR = new SensorId("air");
    private static final Instant START = Instant.parse("2026-05-04T06:00:00Z");

    private final SensorClocks clocks = new SensorClocks();

    private static Instant minute(int minute) {
        return START.plusSeconds(60L * minute);
    }

    @Test
    void a_clock_that_stays_behind_is_behind_by_its_smallest_distance() {
        for (int i = 0; i < 10; i++) {
            clocks.heard(AIR, minute(i), Duration.ofHours(-3).minusSeconds(i % 3));
        }
        assertEquals(Map.of(AIR, Duration.ofHours(-3)), clocks.ahead(minute(10)));
    }

    @Test
    void a_clock_that_is_ahead_is_known_from_readings_that_were_refused() {
        for (int i = 0; i < 5; i++) {
            clocks.heard(AIR, minute(i), Duration.ofHours(2));
        }
        assertEquals(Map.of(AIR, Duration.ofHours(2)), clocks.ahead(minute(5)));
    }

    @Test
    void a_backlog_that_comes_in_a_burst_says_nothing_and_what_follows_says_that_the_clock_is_right() {
        for (int i = 0; i < 500; i++) {
            clocks.heard(AIR, minute(0), Duration.ofMinutes(i - 2880));
        }
        assertEquals(Map.of(), clocks.ahead(minute(0)));
        for (int i = 1; i < 5; i++) {
            clocks.heard(AIR, minute(i), Duration.ofSeconds(-2));
        }
        assertEquals(Map.of(AIR, Duration.ofSeconds(-2)), clocks.ahead(minute(5)));
    }

    @Test
    void one_message_that_is_on_time_among_late_ones_clears_the_clock() {
        for (int i = 0; i < 4; i++) {
            clocks.heard(AIR, minute(i), Duration.ofHours(-5));
        }
        clocks.heard(AIR, minute(4), Duration.ofSeconds(-1));
        assertEquals(Map.of(AIR, Duration.ofSeconds(-1)), clocks.ahead(minute(5)));
    }

    @Test
    void of_few_or_old_messages_nothing_is_said() {
        for (int i = 0; i < 4; i++) {
            clocks.heard(AIR, minute(i), Duration.ofHours(-5));
        }
        assertEquals(Map.of(), clocks.ahead(minute(4)));
        clocks.heard(AIR, minute(4), Duration.ofHours(-5));
        assertEquals(Map.of(AIR, Duration.ofHours(-5)), clocks.ahead(minute(4)));
        assertEquals(Map.of(), clocks.ahead(minute(300)));
    }
}
