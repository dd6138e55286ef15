package bagward.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.fault.ImpossibleValueException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SkyTest {
    private static final Site VALLEY = new Site(51.98, 5.66, 10);
    private static final Instant START = Instant.parse("2026-04-01T00:00:00Z");
    private static final int DAYS = 20;
    private static final TimeGrid GRID = new TimeGrid(START, Duration.ofMinutes(10), DAYS * 144);
    private static final SkyView VIEW = SkyView.of(VALLEY, GRID);

    @ParameterizedTest
    @CsvSource({"1.0, SUNNY", "0.867, SUNNY", "0.866, MIXED", "0.467, MIXED", "0.466, CLOUDY", "0, CLOUDY"})
    void the_sky_is_judged_by_its_index(double index, Sky sky) {
        assertEquals(sky, SkyLimits.USUAL.judge(index));
    }

    @Test
    void limits_out_of_order_are_refused() {
        assertThrows(ImpossibleValueException.class, () -> new SkyLimits(0.8, 0.5));
    }

    @Test
    void a_sensor_outdoors_sees_the_share_that_the_clouds_let_through() {
        RegularSeries light = light(day -> 0.6);
        assertEquals(
                0.6, VIEW.clearSkyIndex(light, Transmission.OUTDOORS, day(3)).orElseThrow(), 1e-9);
    }

    @Test
    void a_house_learns_its_transmission_and_then_knows_the_sky() {
        RegularSeries light = light(day -> 0.55 * (day % 4 == 0 ? 1.0 : 0.3));
        Transmission learnt = Transmission.learn(VIEW, light, days());
        assertEquals(0.55, learnt.share(), 0.01);
        assertTrue(learnt.learnt());
        assertEquals(DAYS, learnt.days());
        assertEquals(Sky.SUNNY, sky(light, learnt, day(4)));
        assertEquals(Sky.CLOUDY, sky(light, learnt, day(5)));
    }

    @Test
    void an_hour_has_a_sky_of_its_own() {
        RegularSeries light = light(day -> 0.5);
        Span hour = new Span(START.plus(Duration.ofHours(10)), START.plus(Duration.ofHours(11)));
        assertEquals(Sky.MIXED, sky(light, Transmission.OUTDOORS, hour));
    }

    @Test
    void few_days_teach_nothing() {
        RegularSeries light = light(day -> 0.5);
        assertEquals(Transmission.ASSUMED, Transmission.learn(VIEW, light, days().subList(0, 9)));
    }

    @Test
    void the_night_has_no_sky() {
        Span night = new Span(START, START.plus(Duration.ofHours(3)));
        assertEquals(OptionalDouble.empty(), VIEW.clearSkyIndex(light(day -> 0.5), Transmission.OUTDOORS, night));
    }

    @Test
    void a_day_of_which_little_is_known_has_no_sky() {
        RegularSeries light = light(day -> day == 2 ? Double.NaN : 0.5);
        assertEquals(OptionalDouble.empty(), VIEW.ratio(light, day(2)));
    }

    @Test
    void lamps_at_night_do_not_brighten_the_sky() {
        double[] values = light(day -> 0.5).toArray();
        for (int i = 0; i < values.length; i++) {
            values[i] += VIEW.clearPhotons().known(i) ? 0 : 200;
        }
        assertEquals(0.5, VIEW.ratio(RegularSeries.of(GRID, values), day(2)).orElseThrow(), 1e-9);
    }

    @Test
    void polar_night_has_no_sky_and_polar_day_has_one_at_midnight() {
        Site arctic = new Site(78, 15, 0);
        TimeGrid winter = new TimeGrid(Instant.parse("2026-12-21T00:00:00Z"), Duration.ofMinutes(10), 144);
        TimeGrid summer = new TimeGrid(Instant.parse("2026-06-21T00:00:00Z"), Duration.ofMinutes(10), 144);
        assertEquals(0, knownCells(SkyView.of(arctic, winter).clearPhotons()));
        assertEquals(144, knownCells(SkyView.of(arctic, summer).clearPhotons()));
    }

    private static int knownCells(RegularSeries series) {
        int known = 0;
        for (int i = 0; i < series.grid().size(); i++) {
            known += series.known(i) ? 1 : 0;
        }
        return known;
    }

    private static Sky sky(RegularSeries light, Transmission transmission, Span span) {
        return SkyLimits.USUAL.judge(
                VIEW.clearSkyIndex(light, transmission, span).orElseThrow());
    }

    /** Light that is a share of the clear sky, by day. */
    private static RegularSeries light(IntToDoubleFunction share) {
        double[] values = VIEW.clearPhotons().toArray();
        for (int i = 0; i < values.length; i++) {
            values[i] = Double.isNaN(values[i]) ? 0 : values[i] * share.applyAsDouble(i / 144);
        }
        return RegularSeries.of(GRID, values);
    }

    private static Span day(int number) {
        return new Span(START.plus(Duration.ofDays(number)), START.plus(Duration.ofDays(number + 1L)));
    }

    private static List<Span> days() {
        List<Span> days = new ArrayList<>();
        for (int i = 0; i < DAYS; i++) {
            days.add(day(i));
        }
        return days;
    }
}
