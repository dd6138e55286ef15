package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.Span;
import bagward.climate.TimeAtLeast;
import bagward.climate.TimeGrid;
import bagward.units.Celsius;
import bagward.units.RelativeHumidity;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SeedStayTest {
    private static final Instant START = Instant.parse("2031-08-04T00:00:00Z");
    private static final Storage STORAGE = Seeds.storage();

    private static Climate hourly(double celsius, double... percents) {
        TimeGrid grid = new TimeGrid(START, Duration.ofHours(1), percents.length);
        double[] degrees = new double[percents.length];
        java.util.Arrays.fill(degrees, celsius);
        return new Climate(
                RegularSeries.of(grid, degrees), RegularSeries.of(grid, percents), RegularSeries.unknown(grid));
    }

    private static SeedStay stay(Climate air, int hours) {
        return SeedStay.over(air, new Span(START, START.plus(Duration.ofHours(hours))), STORAGE);
    }

    private static TimeAtLeast hours(int known, int unknown) {
        return new TimeAtLeast(Duration.ofHours(known), Duration.ofHours(unknown));
    }

    @Test
    void dry_air_is_dry_enough_and_lets_no_fungus_grow() {
        SeedAir air = SeedAir.of(new Celsius(22), new RelativeHumidity(35), STORAGE);
        assertEquals(Dryness.DRY_ENOUGH, air.dryness());
        assertEquals(GrowthClass.NONE, air.growth());
        assertTrue(air.fungi().isEmpty());
    }

    @Test
    void damp_air_names_the_fungi_and_the_class_of_growth() {
        // At 20 °C growth of 1 mm a day begins at 83.59 %RH (table of isopleths), 2 mm at three points more.
        SeedAir air = SeedAir.of(new Celsius(20), new RelativeHumidity(84), STORAGE);
        assertEquals(Dryness.TOO_DAMP, air.dryness());
        assertEquals(GrowthClass.STEADY, air.growth());
        assertEquals(8, air.fungi().size());
    }

    @Test
    void the_hundred_rule_adds_humidity_and_fahrenheit() {
        // 20 °C is 68 °F.
        assertEquals(100, HundredRule.sum(20, 32), 1e-9);
        assertTrue(
                SeedAir.of(new Celsius(20), new RelativeHumidity(32), STORAGE).keepsHundredRule());
        assertFalse(
                SeedAir.of(new Celsius(20), new RelativeHumidity(32.5), STORAGE).keepsHundredRule());
    }

    @Test
    void hours_of_a_stay_are_counted_by_fungus_and_class_and_gaps_are_unknown() {
        SeedStay stay = stay(hourly(20, 50, 66, 72, Double.NaN, 78, 84), 6);
        assertEquals(hours(4, 1), stay.fungi().get(0).time());
        assertEquals("Penicillium", stay.fungi().get(7).fungus().name());
        assertEquals(hours(1, 1), stay.fungi().get(7).time());
        Map<GrowthClass, Duration> growth = stay.growth();
        assertEquals(Duration.ofHours(3), growth.get(GrowthClass.NONE));
        assertEquals(Duration.ofHours(1), growth.get(GrowthClass.VERY_SLOW));
        assertEquals(Optional.of(GrowthClass.STEADY), stay.worst());
        assertEquals(Duration.ofHours(1), stay.unknown());
    }

    @Test
    void time_that_no_reading_covers_is_unknown() {
        SeedStay stay = stay(hourly(20, 50, 50), 10);
        assertEquals(Duration.ofHours(8), stay.unknown());
        assertEquals(hours(0, 8), stay.fungi().get(0).time());
        assertEquals(Optional.empty(), stay(hourly(20), 3).worst());
    }

    @Test
    void the_first_dry_enough_hour_is_told_and_air_that_leaves_it_open_counts_as_unknown() {
        SeedStay stay = stay(hourly(20, 80, 58, 40, Double.NaN, 42), 5);
        assertEquals(Optional.of(START.plus(Duration.ofHours(2))), stay.firstDryEnough());
        assertEquals(hours(2, 2), stay.dryEnough());
    }

    @Test
    void the_course_keeps_gaps_and_has_no_best_value_where_the_equation_ends() {
        MoistureCourse course = stay(hourly(20, 50, Double.NaN, 85), 3).course();
        assertTrue(course.middle().known(0)
                && course.atLeast().known(0)
                && course.atMost().known(0));
        assertFalse(course.atLeast().known(1)
                || course.middle().known(1)
                || course.atMost().known(1));
        assertTrue(course.atLeast().known(2));
        assertFalse(course.middle().known(2) || course.atMost().known(2));
    }

    @Test
    void minutes_and_hours_give_the_same_stay() {
        Climate hours = hourly(20, 50, 66, 72, 84);
        TimeGrid grid = new TimeGrid(START, Duration.ofMinutes(1), 240);
        double[] degrees = new double[240];
        double[] percents = new double[240];
        for (int i = 0; i < 240; i++) {
            degrees[i] = 20;
            percents[i] = hours.humidity().valueOrNaN(i / 60);
        }
        Climate minutes = new Climate(
                RegularSeries.of(grid, degrees), RegularSeries.of(grid, percents), RegularSeries.unknown(grid));
        assertEquals(stay(hours, 4).fungi(), stay(minutes, 4).fungi());
        assertEquals(stay(hours, 4).growth(), stay(minutes, 4).growth());
        assertEquals(stay(hours, 4).dryEnough(), stay(minutes, 4).dryEnough());
    }
}
