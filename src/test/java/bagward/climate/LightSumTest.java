package bagward.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.fault.ImpossibleValueException;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class LightSumTest {
    private static final Span TWELVE_HOURS = Days.hours(6, 18);
    private static final BitSet NONE = new BitSet();

    @ParameterizedTest
    @MethodSource
    void sums_agree_with_the_outside(PublishedCheck check) {
        double sum = switch (check.quantity()) {
            case "light sum" -> constant(check.input("ppfd"), check.input("hours"));
            case "half-sine light sum" ->
                halfSine((int) check.input("minutes"), 0).moles();
            case "half-sine loss" ->
                100
                        * (1
                                - halfSine(1, check.input("hole")).moles()
                                        / halfSine(1, 0).moles());
            case "light sum of global" -> check.input("rs") * Light.MICROMOLES_PER_GLOBAL_WATT;
            default -> throw new IllegalArgumentException("no function for " + check);
        };
        assertEquals(check.value(), sum, check.tolerance(), check.toString());
    }

    static Stream<PublishedCheck> sums_agree_with_the_outside() {
        return PublishedCheck.of("light-sums.csv");
    }

    @ParameterizedTest
    @CsvSource({"0, true", "0.5, true", "0.6, false", "4, false"})
    void a_hole_at_noon_makes_a_sum_incomplete_and_never_low(double hole, boolean complete) {
        assertEquals(complete, halfSine(1, hole).complete());
    }

    @Test
    void a_gap_at_night_takes_nothing_away() {
        RegularSeries dark = Days.of(5, hour -> hour < 5 ? Double.NaN : hour < 6 || hour > 18 ? 0 : 500);
        assertTrue(LightSum.of(dark, Days.DAY, TWELVE_HOURS, NONE).complete());
    }

    @Test
    void lamps_at_night_count() {
        RegularSeries lamps = Days.of(5, hour -> 100);
        assertEquals(8.64, LightSum.of(lamps, Days.DAY, TWELVE_HOURS, NONE).moles(), 1e-9);
    }

    @Test
    void clipped_light_is_at_least_so_much() {
        SeriesId series = new SeriesId(new SensorId("lux"), Quantity.LIGHT);
        Instant noon = Days.MIDNIGHT.plus(Duration.ofHours(12));
        Reading atTheTop = new Reading(series, noon, 65_535 / 54.0, Set.of(ReadingFlag.CLIPPED));
        Reading below = Reading.of(series, noon, 65_534 / 54.0);
        RegularSeries light = Days.of(5, hour -> 500);
        BitSet clipped = LightSum.clippedCells(light.grid(), List.of(atTheTop));
        assertFalse(LightSum.of(light, Days.DAY, TWELVE_HOURS, clipped).complete());
        assertTrue(LightSum.of(light, Days.hours(6, 11), Days.hours(6, 11), clipped)
                .complete());
        assertTrue(LightSum.clippedCells(light.grid(), List.of(below)).isEmpty());
    }

    @Test
    void no_light_needs_a_factor_that_light_cannot_have() {
        // 683 lm/W at 555 nm and 4.639 umol/J (CODATA constants): 147.2 lx for each umol
        assertThrows(ImpossibleValueException.class, () -> new LightFactor(148, "a guess"));
        for (LightSource source : LightSource.values()) {
            // one joule carries 3.34 umol at 400 nm and 5.85 at 700 nm (CODATA constants)
            assertTrue(source.micromolesPerJoule() > 3.34 && source.micromolesPerJoule() < 5.85);
        }
    }

    @ParameterizedTest
    @CsvSource({"2026-03-29, 8.28", "2026-10-25, 9.0", "2026-06-21, 8.64"})
    void a_day_on_which_clocks_change_is_summed_over_its_true_length(LocalDate date, double moles) {
        ZoneId amsterdam = ZoneId.of("Europe/Amsterdam");
        Span day = Span.ofDay(date, amsterdam);
        TimeGrid grid = TimeGrid.covering(day.from(), day.to(), Duration.ofMinutes(5));
        double[] values = new double[grid.size()];
        Arrays.fill(values, 100);
        LightSum sum = LightSum.ofDay(RegularSeries.of(grid, values), new Site(51.98, 5.66, 10), date, amsterdam, NONE);
        assertEquals(moles, sum.moles(), 1e-9);
        assertTrue(sum.complete());
    }

    @Test
    void in_polar_night_no_gap_matters_and_in_polar_day_each_does() {
        Site arctic = new Site(70, 20, 0);
        LocalDate winter = LocalDate.of(2026, 12, 21);
        LocalDate summer = LocalDate.of(2026, 6, 21);
        assertTrue(LightSum.ofDay(unknown(winter), arctic, winter, ZoneOffset.UTC, NONE)
                .complete());
        assertFalse(LightSum.ofDay(unknown(summer), arctic, summer, ZoneOffset.UTC, NONE)
                .complete());
    }

    private static RegularSeries unknown(LocalDate date) {
        Span day = Span.ofDay(date, ZoneOffset.UTC);
        return RegularSeries.unknown(TimeGrid.covering(day.from(), day.to(), Duration.ofMinutes(5)));
    }

    private static double constant(double photons, double hours) {
        RegularSeries light = Days.of(1, hour -> hour < hours ? photons : 0);
        return LightSum.of(light, Days.DAY, TWELVE_HOURS, NONE).moles();
    }

    /** A day of twelve hours with a peak of 1000 and a hole of so many hours round noon. */
    private static LightSum halfSine(int minutes, double hole) {
        RegularSeries light = Days.of(minutes, hour -> {
            if (Math.abs(hour - 12) < hole / 2) {
                return Double.NaN;
            }
            return hour < 6 || hour > 18 ? 0 : 1000 * Math.sin(Math.PI * (hour - 6) / 12);
        });
        return LightSum.of(light, Days.DAY, TWELVE_HOURS, NONE);
    }
}
