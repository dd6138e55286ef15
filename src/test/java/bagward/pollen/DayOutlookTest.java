package bagward.pollen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Span;
import bagward.climate.Transmission;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DayOutlookTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);
    private static final Transmission GLASS = new Transmission(SimulatedHouse.TRANSMISSION, 30);

    @Test
    void before_sunrise_a_clear_day_promises_more_than_an_overcast_one() {
        DayOutlook outlook = outlook(HouseDay.unknown(SimulatedHouse.SITE, DAY, SimulatedHouse.ZONE), 4);
        assertTrue(outlook.indexSoFar().isEmpty());
        OutlookPoint ten = outlook.headline();
        assertEquals(SimulatedHouse.at(DAY, 10), ten.at());
        assertFalse(ten.over());
        assertTrue(ten.ifClear().probability() > ten.ifSo().probability() + 0.2);
        assertEquals(ten.molesIfClear() / 3, ten.molesIfSo(), 1e-9);
    }

    @Test
    void what_is_over_is_measured_and_both_courses_meet_there() {
        DayOutlook outlook = outlook(SimulatedHouse.day(DAY, 0.4), 9);
        assertEquals(0.4, outlook.indexSoFar().orElseThrow(), 0.02);
        for (OutlookPoint point : outlook.points()) {
            assertEquals(!point.at().isAfter(SimulatedHouse.at(DAY, 9)), point.over());
            if (point.over()) {
                assertEquals(point.molesIfClear(), point.molesIfSo());
            } else {
                assertTrue(point.molesIfClear() > point.molesIfSo());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.6, 1})
    void a_sky_that_stays_as_it_is_brings_the_light_that_was_said(double brightness) {
        HouseDay day = SimulatedHouse.day(DAY, brightness);
        OutlookPoint noon = outlook(day, 9).points().stream()
                .filter(p -> !p.at().isBefore(SimulatedHouse.at(DAY, 13)))
                .findFirst()
                .orElseThrow();
        double came = day.lightUntil(noon.at()).moles();
        assertEquals(came, noon.molesIfSo(), 0.03 * came);
    }

    @Test
    void light_that_is_missing_since_sunrise_leaves_no_outlook() {
        double[] light = SimulatedHouse.light(DAY);
        for (int cell = 7 * 12; cell < 8 * 12; cell++) {
            light[cell] = Double.NaN;
        }
        HouseDay day = SimulatedHouse.day(DAY, light, 18);
        assertTrue(find(day, 9).isEmpty());
        assertTrue(find(day, 7).isPresent());
    }

    @Test
    void readings_after_now_change_nothing_that_is_over_or_to_come() {
        double[] until = SimulatedHouse.light(DAY);
        for (int cell = 9 * 12; cell < until.length; cell++) {
            until[cell] = Double.NaN;
        }
        DayOutlook knowing = outlook(SimulatedHouse.day(DAY, 1), 9);
        DayOutlook unknowing = outlook(SimulatedHouse.day(DAY, until, 18), 9);
        assertEquals(unknowing.points(), knowing.points());
    }

    @Test
    void the_best_hours_begin_when_pollen_is_likely_and_end_in_the_early_afternoon() {
        Span best = outlook(SimulatedHouse.day(DAY, 1), 9).bestHours().orElseThrow();
        LocalTime start = best.from().atZone(SimulatedHouse.ZONE).toLocalTime();
        LocalTime end = best.to().atZone(SimulatedHouse.ZONE).toLocalTime();
        assertTrue(start.isAfter(LocalTime.of(8, 0)) && start.isBefore(LocalTime.of(11, 0)), start.toString());
        assertTrue(end.isAfter(LocalTime.of(15, 30)) && end.isBefore(LocalTime.of(17, 0)), end.toString());
    }

    @Test
    void a_dull_day_has_no_best_hours_and_a_hot_one_ends_them() {
        assertEquals(
                Optional.empty(), outlook(SimulatedHouse.day(DAY, 0.08), 12).bestHours());
        assertEquals(
                Optional.empty(), outlook(SimulatedHouse.day(DAY, 1, 29), 12).bestHours(), "29 °C since midnight");
    }

    @Test
    void the_prior_says_that_it_is_one_and_has_a_wide_interval() {
        Chance chance = outlook(SimulatedHouse.day(DAY, 1), 9).headline().ifSo();
        assertEquals(Chance.Basis.PRIOR, chance.basis());
        assertTrue(chance.interval().high() - chance.interval().low() > 0.3);
    }

    private static DayOutlook outlook(HouseDay day, int hour) {
        return find(day, hour).orElseThrow();
    }

    private static Optional<DayOutlook> find(HouseDay day, int hour) {
        Instant now = SimulatedHouse.at(DAY, hour);
        return DayOutlook.of(day, GLASS, SimulatedHouse.HEAT, PriorChance.USUAL, now, SimulatedHouse.at(DAY, 10));
    }
}
