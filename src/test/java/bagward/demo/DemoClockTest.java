package bagward.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import bagward.fault.ImpossibleValueException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DemoClockTest {
    private static final Instant START = Instant.parse("2026-04-22T04:40:00Z");
    private static final ZoneId UTC = ZoneId.of("UTC");

    private final AtomicLong nanos = new AtomicLong(5);
    private final DemoClock clock = DemoClock.standing(START, 30, UTC, nanos::get);

    @Test
    void the_clock_stands_until_it_is_released() {
        nanos.addAndGet(Duration.ofHours(1).toNanos());
        assertEquals(START, clock.instant());
    }

    @Test
    void once_released_a_minute_lasts_two_seconds_at_speed_thirty() {
        clock.release();
        nanos.addAndGet(Duration.ofSeconds(2).toNanos());
        assertEquals(START.plusSeconds(60), clock.instant());
        assertEquals(Duration.ofSeconds(1), clock.realTimeUntil(START.plusSeconds(90)));
        assertEquals(Duration.ZERO, clock.realTimeUntil(START));
    }

    @Test
    void a_second_release_does_not_set_the_clock_back() {
        clock.release();
        nanos.addAndGet(Duration.ofSeconds(10).toNanos());
        clock.release();
        assertEquals(START.plusSeconds(300), clock.instant());
    }

    @Test
    void the_same_clock_in_another_zone_runs_with_it() {
        Clock elsewhere = clock.withZone(ZoneId.of("Europe/Berlin"));
        clock.release();
        nanos.addAndGet(Duration.ofSeconds(1).toNanos());
        assertEquals(clock.instant(), elsewhere.instant());
        assertEquals(ZoneId.of("Europe/Berlin"), elsewhere.getZone());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, -30, 2001, Double.NaN})
    void a_speed_outside_one_to_two_thousand_is_refused(double speed) {
        assertThrows(ImpossibleValueException.class, () -> DemoClock.standing(START, speed, UTC));
    }
}
