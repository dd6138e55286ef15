package bagward.bag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Climate;
import bagward.climate.Light;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BagClimatesTest {
    private static final Instant START = Instant.parse("2026-05-01T00:00:00Z");
    private static final Duration MINUTE = Duration.ofMinutes(1);

    /** Values of the balance in its steady state, computed from the equations with Python's math module (Tetens). */
    @ParameterizedTest
    @CsvSource({
        "15, 60, 0, 0.2, 0.015, 15, 68",
        "15, 60, 0, 0.8, 0.015, 15, 92",
        "12, 85, 0, 0.4, 0.015, 12, 91",
        "22, 60, 200, 0.5, 0.015, 25, 75.04",
        "22, 60, 500, 0.5, 0.015, 29.5, 69.24",
        "22, 60, 500, 0.5, 0.03, 37, 62.64"
    })
    void the_steady_state_is_that_of_the_balance(
            double house, double humidity, double global, double closure, double gain, double bag, double expected) {
        Climate climate = constant(30, house, humidity, global);

        BagClimate inside = BagClimates.estimate(climate, certain(closure, gain, 8), START, Sky.UNKNOWN);

        assertEquals(bag, inside.temperature().middle().valueOrNaN(29), 1e-6);
        assertEquals(expected, inside.humidity().middle().valueOrNaN(29), 0.005);
    }

    @Test
    void a_step_in_the_house_is_followed_exactly_whatever_the_cell_length() {
        double tau = 8;
        for (int step : new int[] {1, 2, 4, 8}) {
            int cells = 64 / step;
            double[] house = new double[cells];
            Arrays.fill(house, 10);
            Arrays.fill(house, 0, 32 / step, 20);
            BagClimate inside = BagClimates.estimate(
                    climate(Duration.ofMinutes(step), house, filled(cells, 70), filled(cells, 0)),
                    certain(0.5, 0.01, tau),
                    START,
                    Sky.UNKNOWN);
            double mean = 10 + 10 * (1 - Math.exp(-8 / tau)) * tau / 8;
            double sum = 0;
            for (int i = 32 / step; i < 40 / step; i++) {
                sum += inside.temperature().middle().valueOrNaN(i);
            }
            assertEquals(mean, sum * step / 8, 1e-9, "cells of " + step + " min");
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void an_open_bag_is_the_house_and_a_closed_one_is_saturated(long seed) {
        Climate house = randomHouse(new Random(seed), 600);

        BagClimate open = BagClimates.estimate(house, certain(0, 0, 0.05), START, Sky.UNKNOWN);
        BagClimate closed = BagClimates.estimate(house, certain(1, 0.01, 0.05), START, Sky.UNKNOWN);

        for (int i = 1; i < 600; i++) {
            assertEquals(
                    house.temperature().valueOrNaN(i),
                    open.temperature().middle().valueOrNaN(i),
                    0.2);
            assertEquals(
                    house.humidity().valueOrNaN(i), open.humidity().middle().valueOrNaN(i), 1.5);
            assertEquals(100, closed.humidity().middle().valueOrNaN(i), 1);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void the_interval_holds_the_middle_and_stays_within_what_humidity_can_be(long seed) {
        Climate house = randomHouse(new Random(seed), 2000);

        BagClimate inside = BagClimates.estimate(house, Stations.paper(), START, Sky.UNKNOWN);

        for (int i = 0; i < 2000; i++) {
            double low = inside.humidity().low().valueOrNaN(i);
            double middle = inside.humidity().middle().valueOrNaN(i);
            double high = inside.humidity().high().valueOrNaN(i);
            assertTrue(0 <= low && low <= middle && middle <= high && high <= 100, "cell " + i);
            assertTrue(inside.temperature().low().valueOrNaN(i)
                    < inside.temperature().high().valueOrNaN(i));
        }
    }

    @Test
    void a_cooler_film_is_wet_before_the_air_is_saturated() {
        BagBelief paper = BagBelief.prior(Stations.paper());

        BagClimate night = BagClimates.estimate(constant(60, 14, 99, 0), paper, START, Sky.UNKNOWN);
        BagClimate dryNight = BagClimates.estimate(constant(60, 14, 70, 0), paper, START, Sky.UNKNOWN);

        assertTrue(night.filmWetAt(59));
        assertEquals(97.8, night.humidity().middle().valueOrNaN(59), 0.1);
        assertFalse(dryNight.filmWetAt(59));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void water_that_is_certain_is_likely_and_water_that_is_likely_is_possible(long seed) {
        Climate house = randomHouse(new Random(seed), 2000);

        FilmWetness film =
                BagClimates.estimate(house, colderFilm(), START, Sky.UNKNOWN).film();

        int[] cells = film.cells(0, 2000);
        assertTrue(
                0 < cells[0] && cells[0] < cells[1] && cells[1] < cells[2] && cells[2] < 2000, Arrays.toString(cells));
        for (int i = 0; i < 2000; i++) {
            assertTrue(!film.certainAt(i) || film.likelyAt(i), "cell " + i);
            assertTrue(!film.likelyAt(i) || film.possibleAt(i), "cell " + i);
        }
    }

    @Test
    void a_measured_bag_is_certainly_wet_only_well_above_what_the_sensor_may_be_off() {
        BagClimate estimate = BagClimates.estimate(constant(4, 14, 60, 0), Stations.paper(), START, Sky.UNKNOWN);
        Climate heard = climate(MINUTE, filled(4, 13), new double[] {90, 93, 96, 100}, filled(4, Double.NaN));

        FilmWetness film = BagClimates.withMeasured(estimate, heard).film();

        assertEquals(BitSet.valueOf(new long[] {0b1000}), film.certain());
        assertEquals(BitSet.valueOf(new long[] {0b1100}), film.likely());
        assertEquals(BitSet.valueOf(new long[] {0b1110}), film.possible());
    }

    @Test
    void gaps_stay_gaps_and_the_estimate_starts_again_at_the_steady_state() {
        double[] house = filled(40, 20);
        Arrays.fill(house, 10, 20, Double.NaN);
        Arrays.fill(house, 20, 40, 10);

        BagClimate inside = BagClimates.estimate(
                climate(MINUTE, house, filled(40, 70), filled(40, 0)), certain(0.5, 0.01, 8), START, Sky.UNKNOWN);

        assertFalse(inside.temperature().middle().known(10));
        assertFalse(inside.humidity().middle().known(19));
        assertEquals(10, inside.temperature().middle().valueOrNaN(20), 1e-9);
    }

    @Test
    void without_house_humidity_the_temperature_is_still_known() {
        BagClimate inside = BagClimates.estimate(
                climate(MINUTE, filled(5, 20), filled(5, Double.NaN), filled(5, 0)),
                Stations.paper(),
                START,
                Sky.UNKNOWN);

        assertTrue(inside.temperature().middle().known(4));
        assertFalse(inside.humidity().middle().known(4));
    }

    @Test
    void without_a_light_sensor_the_sun_widens_the_band_and_the_night_is_dark() {
        Climate noLight = climate(MINUTE, filled(5, 20), filled(5, 70), filled(5, Double.NaN));

        BagClimate noon = BagClimates.estimate(noLight, Stations.paper(), START, at -> 800);
        BagClimate night = BagClimates.estimate(noLight, Stations.paper(), START, at -> 0);
        BagClimate unknown = BagClimates.estimate(noLight, Stations.paper(), START, Sky.UNKNOWN);

        assertTrue(width(noon.temperature(), 4) > 2 * width(night.temperature(), 4));
        assertFalse(unknown.temperature().middle().known(4));
    }

    @Test
    void cells_before_the_bag_was_put_on_are_unknown() {
        BagClimate inside = BagClimates.estimate(
                constant(20, 20, 70, 0), Stations.paper(), START.plus(Duration.ofMinutes(7)), Sky.UNKNOWN);

        assertFalse(inside.temperature().middle().known(6));
        assertTrue(inside.temperature().middle().known(7));
    }

    @Test
    void what_a_lent_sensor_said_takes_the_place_of_the_estimate() {
        BagClimate estimate = BagClimates.estimate(constant(3, 14, 95, 0), Stations.paper(), START, Sky.UNKNOWN);
        Climate heard =
                climate(MINUTE, new double[] {13, Double.NaN, 13}, new double[] {88, 90, 96}, filled(3, Double.NaN));

        BagClimate inside = BagClimates.withMeasured(estimate, heard);

        assertEquals(Origin.MEASURED, inside.originAt(0));
        assertEquals(Origin.ESTIMATED, inside.originAt(1));
        assertEquals(88, inside.humidity().middle().valueOrNaN(0));
        assertFalse(inside.filmWetAt(0));
        assertTrue(inside.filmWetAt(2));
        assertTrue(width(inside.humidity(), 0) < width(estimate.humidity(), 0));
    }

    private static double width(Banded banded, int i) {
        return banded.high().valueOrNaN(i) - banded.low().valueOrNaN(i);
    }

    /** A closed bag whose film cools by 1.5 K on a clear night. */
    private static BagBelief colderFilm() {
        return new BagBelief(
                new Spread(0.75, 0.02),
                new Spread(0.75, 0.02),
                new Spread(0.01, 0),
                new Spread(8, 0),
                new Spread(0, 0),
                new Spread(1.5, 0.4),
                0.1,
                0.1,
                0);
    }

    private static BagBelief certain(double closure, double gain, double tau) {
        return new BagBelief(
                new Spread(closure, 0),
                new Spread(closure, 0),
                new Spread(gain, 0),
                new Spread(tau, 0),
                new Spread(0, 0),
                new Spread(0, 0),
                0,
                0,
                0);
    }

    private static Climate constant(int cells, double temperature, double humidity, double global) {
        return climate(
                MINUTE,
                filled(cells, temperature),
                filled(cells, humidity),
                filled(cells, global * Light.MICROMOLES_PER_GLOBAL_WATT));
    }

    private static Climate randomHouse(Random random, int cells) {
        double[] temperature = new double[cells];
        double[] humidity = new double[cells];
        double[] light = new double[cells];
        for (int i = 0; i < cells; i++) {
            double noon = Math.max(0, Math.sin(2 * Math.PI * i / 1440.0));
            temperature[i] = 14 + 8 * noon + random.nextGaussian() * 0.01;
            humidity[i] = 80 - 25 * noon + random.nextGaussian() * 0.1;
            light[i] = 900 * noon;
        }
        return climate(MINUTE, temperature, humidity, light);
    }

    private static Climate climate(Duration step, double[] temperature, double[] humidity, double[] light) {
        TimeGrid grid = new TimeGrid(START, step, temperature.length);
        return new Climate(
                RegularSeries.of(grid, temperature), RegularSeries.of(grid, humidity), RegularSeries.of(grid, light));
    }

    private static double[] filled(int cells, double value) {
        double[] values = new double[cells];
        Arrays.fill(values, value);
        return values;
    }
}
