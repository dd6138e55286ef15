package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeatWatchTest {
    private static final HeatLimits LIMITS = new HeatLimits(27, 30, Duration.ofHours(3), 33, "test");

    private static HeatAssessment heat(Bags bags) {
        return HeatWatch.assess(bags.build().temperature().middle(), LIMITS);
    }

    @ParameterizedTest
    @CsvSource({
        "27, 9, NONE",
        "27.1, 0.1, WATCH",
        "30.1, 2.9, WATCH",
        "30.1, 3, HEAT",
        "30, 9, WATCH",
        "33, 2, WATCH",
        "33.1, 0.1, POLLEN_LOSS"
    })
    void a_band_begins_above_its_limit_and_heat_only_after_hours(double celsius, double hours, HeatBand band) {
        assertEquals(
                band,
                heat(Bags.everyMinute().air(1, 20, 60).air(hours, celsius, 60)).now());
    }

    @Test
    void a_cool_minute_starts_the_hot_hours_anew_but_a_gap_does_not() {
        assertEquals(
                HeatBand.WATCH,
                heat(Bags.everyMinute().air(2, 31, 60).air(0.1, 29, 60).air(2, 31, 60))
                        .worst());
        assertEquals(
                HeatBand.HEAT,
                heat(Bags.everyMinute().air(2, 31, 60).gap(0.5).air(1, 31, 60)).worst());
    }

    @Test
    void the_worst_is_kept_and_the_days_since_are_told() {
        HeatAssessment heat = heat(Bags.everyMinute().air(4, 32, 60).air(48, 20, 60));
        Instant end = Bags.START.plus(Duration.ofHours(52));
        assertEquals(HeatBand.NONE, heat.now());
        assertEquals(HeatBand.HEAT, heat.worst());
        assertEquals(Optional.of(Duration.ofDays(2)), heat.sinceHeat(end));
        assertEquals("up to 32.0 °C, above 30 °C for 4.0 h at a stretch", heat.reason());
    }

    @Test
    void nothing_known_is_told_as_unknown() {
        HeatAssessment heat = heat(Bags.everyMinute().gap(5));
        assertEquals("temperature unknown; 5.0 h unknown", heat.reason());
        assertEquals(5, heat.unknownHours(), 1e-9);
        assertTrue(heat.sinceHeat(Bags.START).isEmpty());
    }
}
