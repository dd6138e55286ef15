package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.climate.WetnessRule;
import bagward.mould.NightRule.Verdict;
import bagward.mould.NightRule.Weather;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

class NightRuleTest {
    private static final ZoneId DUBLIN = ZoneId.of("Europe/Dublin");
    private static final Instant START = Instant.parse("2031-01-06T00:00:00Z");
    private static final TimeGrid WEEK = new TimeGrid(START, Duration.ofHours(1), 168);

    private static Verdict judge(IntToDoubleFunction celsius, IntToDoubleFunction percent) {
        Climate house = new Climate(series(celsius), series(percent), RegularSeries.unknown(WEEK));
        return NightRule.judge(house, DUBLIN, WEEK.end(), WetnessRule.HumidityLimit.USUAL);
    }

    private static RegularSeries series(IntToDoubleFunction byHour) {
        double[] values = new double[WEEK.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = byHour.applyAsDouble(i);
        }
        return RegularSeries.of(WEEK, values);
    }

    private static double firstHoursOfDay(int hour, int wetHours) {
        return hour % 24 < wetHours ? 95 : 70;
    }

    @Test
    void wet_mild_nights_of_a_week_are_conducive() {
        Verdict verdict = judge(hour -> 12, hour -> firstHoursOfDay(hour, 8));
        assertEquals(Weather.CONDUCIVE, verdict.weather());
        assertEquals(8, verdict.wetHours(), 1e-9);
        assertEquals(14, verdict.nightHours(), 1e-9);
        assertEquals(
                "wet 8.0 h a day (limit 7 h), nights within 9 to 21 °C for 14.0 h (limit 9.5 h), means of 7 days",
                verdict.reason());
    }

    @Test
    void exactly_seven_wet_hours_or_cold_nights_are_not() {
        assertEquals(
                Weather.NOT_CONDUCIVE,
                judge(hour -> 12, hour -> firstHoursOfDay(hour, 7)).weather());
        assertEquals(
                Weather.NOT_CONDUCIVE,
                judge(hour -> 8.9, hour -> firstHoursOfDay(hour, 8)).weather());
    }

    @Test
    void warm_days_do_not_count_as_nights() {
        Verdict verdict = judge(hour -> hour % 24 >= 8 && hour % 24 < 18 ? 15 : 5, hour -> 95);
        assertEquals(0, verdict.nightHours(), 1e-9);
    }

    @Test
    void missing_hours_that_could_tip_it_leave_it_unknown() {
        Verdict verdict = judge(hour -> hour < 100 ? 12 : Double.NaN, hour -> firstHoursOfDay(hour, 8));
        assertEquals(Weather.UNKNOWN, verdict.weather());
        assertEquals(68, verdict.unknownHours(), 1e-9);
        assertEquals(
                Weather.NOT_CONDUCIVE,
                judge(hour -> hour < 160 ? 5 : Double.NaN, hour -> 95).weather());
    }

    @Test
    void time_before_the_climate_begins_is_unknown() {
        Climate house = new Climate(series(hour -> 12), series(hour -> 70), RegularSeries.unknown(WEEK));
        Verdict verdict =
                NightRule.judge(house, DUBLIN, START.plus(Duration.ofDays(2)), WetnessRule.HumidityLimit.USUAL);
        assertEquals(120, verdict.unknownHours(), 1e-9);
        assertEquals(Weather.UNKNOWN, verdict.weather());
    }
}
