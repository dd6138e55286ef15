package bagward.pollen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.LightSum;
import bagward.climate.Sky;
import bagward.climate.Span;
import bagward.mould.HeatLimits;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HouseDayTest {
    private static final LocalDate DAY = SimulatedHouse.FIRST;

    /**
     * Sums of a real house by hand: each row of the excerpt stands until the next one, from sunrise to sunset by the
     * short almanac formula (equation of time, declination, zenith 90.833°), worked out outside this project. The
     * tolerance is what one cell of five minutes at sunrise can hold.
     */
    @ParameterizedTest
    @CsvSource({
        "2022-02-24, 5.024, 0.944, 8.225",
        "2022-02-25, 5.737, 0.939, 8.925",
        "2022-02-26, 5.055, 1.398, 8.300",
        "2022-02-27, 4.708, 1.271, 7.931",
        "2022-02-28, 4.360, 0.926, 7.513"
    })
    void sums_of_a_real_house_are_those_counted_by_hand_and_lamps_at_night_are_no_sun(
            LocalDate date, double daylight, double toTen, double withLampsAtNight) {
        HouseDay day = OpenHouse.day(date);
        assertEquals(daylight, day.light().moles(), 0.05);
        assertTrue(day.light().complete());
        Instant ten = date.atTime(10, 0).atZone(OpenHouse.ZONE).toInstant();
        assertEquals(toTen, day.lightUntil(ten).moles(), 0.05);
        Span whole = Span.ofDay(date, OpenHouse.ZONE);
        double all = LightSum.of(day.climate().light(), whole, day.daylight(), new java.util.BitSet())
                .moles();
        assertEquals(withLampsAtNight, all, 0.05);
    }

    @Test
    void light_before_sunrise_is_nothing_and_after_sunset_all() {
        HouseDay day = SimulatedHouse.day(DAY, 1);
        assertEquals(0, day.lightUntil(SimulatedHouse.at(DAY, 3)).moles());
        assertTrue(day.lightUntil(SimulatedHouse.at(DAY, 3)).complete());
        assertEquals(
                day.light().moles(), day.lightUntil(SimulatedHouse.at(DAY, 23)).moles());
    }

    @Test
    void a_hole_in_the_morning_leaves_the_sum_open_from_then_on_only() {
        double[] light = SimulatedHouse.light(DAY);
        for (int cell = 9 * 12; cell < 10 * 12; cell++) {
            light[cell] = Double.NaN;
        }
        HouseDay day = SimulatedHouse.day(DAY, light, 18);
        assertTrue(day.lightUntil(SimulatedHouse.at(DAY, 9)).complete());
        assertFalse(day.lightUntil(SimulatedHouse.at(DAY, 10)).complete());
        assertFalse(day.light().complete());
    }

    @Test
    void a_clear_day_gives_the_light_of_a_clear_sky_through_the_glass_but_for_low_sun() {
        HouseDay day = SimulatedHouse.day(DAY, 1);
        double clear = day.clearMoles(day.daylight()) * SimulatedHouse.TRANSMISSION;
        assertEquals(day.light().moles(), clear, 0.01 * clear);
    }

    @Test
    void the_house_learns_its_own_clear_sky_and_calls_its_days_by_it() {
        HouseSeason season = SimulatedHouse.season(40, 1);
        assertEquals(SimulatedHouse.TRANSMISSION, season.transmission().share(), 0.01);
        assertTrue(season.transmission().learnt());
        List<PollenDay> days = season.summaries();
        for (Sky sky : Sky.values()) {
            assertTrue(days.stream().anyMatch(d -> d.sky().orElseThrow() == sky), sky.toString());
        }
    }

    @Test
    void a_hot_day_spoils_the_next_morning_and_a_warm_one_does_not() {
        HouseSeason season = HouseSeason.of(
                SimulatedHouse.HOUSE,
                SimulatedHouse.ZONE,
                List.of(SimulatedHouse.day(DAY, 1, 31), SimulatedHouse.day(DAY.plusDays(1), 1, 28)),
                DAY.plusDays(2),
                SimulatedHouse.HEAT);
        assertTrue(season.summaries().get(0).spoilsNextMorning());
        assertFalse(season.summaries().get(1).spoilsNextMorning());
    }

    @Test
    void a_crop_that_bears_less_heat_loses_the_next_morning_sooner() {
        List<HouseDay> warm = List.of(SimulatedHouse.day(DAY, 1, 28));
        HeatLimits tender = new HeatLimits(20, 22, Duration.ofHours(3), 25, "invented");
        HouseSeason season = HouseSeason.of(SimulatedHouse.HOUSE, SimulatedHouse.ZONE, warm, DAY.plusDays(1), tender);
        assertTrue(season.summaries().get(0).spoilsNextMorning());
    }

    @Test
    void the_days_on_which_clocks_change_are_days_too() {
        for (LocalDate date : List.of(LocalDate.of(2026, 3, 29), LocalDate.of(2026, 10, 25))) {
            HouseDay day = HouseDay.unknown(SimulatedHouse.SITE, date, SimulatedHouse.ZONE);
            assertEquals(date, day.daylight().from().atZone(SimulatedHouse.ZONE).toLocalDate());
            assertFalse(day.light().complete());
        }
    }

    @Test
    void polar_night_has_no_light_and_misses_none() {
        ZoneId oslo = ZoneId.of("Europe/Oslo");
        HouseDay day = HouseDay.unknown(new bagward.climate.Site(70, 20, 0), LocalDate.of(2026, 12, 21), oslo);
        assertEquals(0, day.light().moles());
        assertTrue(day.light().complete());
    }
}
