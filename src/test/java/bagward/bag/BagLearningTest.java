package bagward.bag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Parameters come back from bags that the balance itself made: self-consistency, not proof that bags follow it. */
class BagLearningTest {
    private static final Instant START = Instant.parse("2026-05-01T22:00:00Z");
    private static final Duration STEP = Duration.ofMinutes(5);
    private static final int WEEK = 7 * 288;

    @ParameterizedTest
    @CsvSource({"0.55, 0.4, 0.012, 8, 1", "0.3, 0.3, 0.02, 15, 2", "0.1, 0.05, 0.003, 4, 3", "0.8, 0.6, 0.015, 8, 4"})
    void the_parameters_of_a_bag_come_back(double day, double night, double gain, double response, long seed) {
        SensoredBag bag = bag(day, night, gain, response, seed, WEEK);

        BagLesson lesson = BagLearning.lesson(bag).orElseThrow();

        assertEquals(day, lesson.closureByDay().mean(), 0.05);
        assertEquals(night, lesson.closureByNight().mean(), 0.05);
        assertEquals(gain, lesson.sunGain().mean(), 0.002);
        assertEquals(response, lesson.responseMinutes().mean(), response / 2);
        assertEquals(0, lesson.nightCooling().mean(), 0.1);
    }

    @Test
    void too_short_a_time_teaches_nothing() {
        assertEquals(Optional.empty(), BagLearning.lesson(bag(0.5, 0.4, 0.01, 8, 1, 100)));
    }

    @Test
    void a_day_without_sun_leaves_the_sun_gain_as_it_was_believed() {
        SensoredBag whole = bag(0.5, 0.4, 0.01, 8, 1, WEEK);
        Climate dark = new Climate(
                whole.house().temperature(),
                whole.house().humidity(),
                constant(whole.house().grid(), 0));

        BagLesson lesson =
                BagLearning.lesson(SensoredBag.of(dark, whole.measured())).orElseThrow();
        BagBelief belief = new MaterialLearning(Stations.paper(), List.of(lesson)).unsensored();

        assertEquals(Stations.paper().sunGain().mean(), belief.sunGain().mean(), 1e-6);
        assertEquals(
                Stations.paper().closureByDay().mean(), belief.closureByDay().mean(), 1e-6);
        assertTrue(Math.abs(belief.closureByNight().mean()
                        - Stations.paper().closureByNight().mean())
                > 0.01);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void the_order_of_lessons_does_not_matter(long seed) {
        BagLesson one = BagLearning.lesson(bag(0.5, 0.4, 0.01, 8, seed, WEEK)).orElseThrow();
        BagLesson two =
                BagLearning.lesson(bag(0.7, 0.5, 0.02, 8, seed + 9, WEEK)).orElseThrow();

        BagBelief there = new MaterialLearning(Stations.paper(), List.of(one, two)).unsensored();
        BagBelief back = new MaterialLearning(Stations.paper(), List.of(two, one)).unsensored();

        assertEquals(there.closureByNight().mean(), back.closureByNight().mean(), 1e-12);
        assertEquals(there.sunGain().deviation(), back.sunGain().deviation(), 1e-12);
    }

    @Test
    void more_bags_make_surer_and_a_bag_is_surer_of_itself_than_of_others() {
        BagLesson lesson = BagLearning.lesson(bag(0.5, 0.4, 0.01, 8, 1, WEEK)).orElseThrow();
        BagMaterial paper = Stations.paper();
        MaterialLearning one = new MaterialLearning(paper, List.of(lesson));
        MaterialLearning many = new MaterialLearning(paper, List.of(lesson, lesson, lesson, lesson, lesson, lesson));

        double prior = paper.closureByNight().deviation();
        double afterOne = one.unsensored().closureByNight().deviation();

        assertTrue(afterOne < prior);
        assertTrue(many.unsensored().closureByNight().deviation() < afterOne);
        assertTrue(one.sensored(lesson).closureByNight().deviation() < afterOne);
        assertEquals(6, many.unsensored().sensoredBags());
    }

    @Test
    void without_lessons_the_material_is_its_prior() {
        BagBelief belief = new MaterialLearning(Stations.paper(), List.of()).unsensored();

        assertEquals(
                Stations.paper().closureByDay().mean(), belief.closureByDay().mean(), 1e-12);
        assertEquals(
                Stations.paper().closureByDay().deviation(),
                belief.closureByDay().deviation(),
                1e-12);
    }

    @Test
    void a_side_by_side_night_takes_the_offset_off() {
        SensoredBag whole = bag(0.5, 0.4, 0.01, 8, 1, WEEK);
        Climate house = whole.house();
        Climate shifted = shifted(house, 0.4, -3);

        SensorOffset offset = SensorOffset.sideBySide(house, shifted);
        BagLesson lesson = BagLearning.lesson(new SensoredBag(house, shifted(whole.measured(), 0.4, -3), offset))
                .orElseThrow();

        assertEquals(0.4, offset.temperature().mean(), 1e-9);
        assertEquals(-3, offset.humidity().mean(), 1e-9);
        assertEquals(0.4, lesson.closureByNight().mean(), 0.05);
        assertEquals(
                SensorOffset.UNKNOWN,
                SensorOffset.sideBySide(OpenData.part(house, 0, 20), OpenData.part(shifted, 0, 20)));
    }

    @Test
    void a_spare_sensor_in_other_air_is_not_taken_for_one_that_hung_beside_the_house_sensor() {
        Climate house = bag(0.5, 0.4, 0.01, 8, 1, WEEK).house();
        Climate drawer = new Climate(constant(house.grid(), 14), constant(house.grid(), 70), house.light());

        assertEquals(SensorOffset.UNKNOWN, SensorOffset.sideBySide(house, shifted(house, 3, 0)));
        assertEquals(SensorOffset.UNKNOWN, SensorOffset.sideBySide(house, shifted(house, 0, 12)));
        assertEquals(SensorOffset.UNKNOWN, SensorOffset.sideBySide(house, drawer));
    }

    /** A bag after the balance itself, with sensor noise of 0.1 K and 1 %RH. */
    private static SensoredBag bag(double day, double night, double gain, double response, long seed, int cells) {
        Random random = new Random(seed);
        TimeGrid grid = new TimeGrid(START, STEP, cells);
        double[] temperature = new double[cells];
        double[] humidity = new double[cells];
        double[] light = new double[cells];
        for (int i = 0; i < cells; i++) {
            double sun = Math.max(0, Math.sin(2 * Math.PI * (i / 288.0 - 0.25)));
            double cloud = 0.4 + 0.6 * Math.abs(Math.sin(i / 37.0 + seed));
            light[i] = 1200 * sun * cloud;
            temperature[i] = 13 + 11 * sun * cloud + Math.sin(i / 50.0);
            humidity[i] = 78 - 30 * sun * cloud + 5 * Math.sin(i / 400.0);
        }
        Climate house = new Climate(
                RegularSeries.of(grid, temperature), RegularSeries.of(grid, humidity), RegularSeries.of(grid, light));
        BagClimate truth = BagClimates.estimate(
                house,
                new BagBelief(
                        new Spread(day, 0),
                        new Spread(night, 0),
                        new Spread(gain, 0),
                        new Spread(response, 0),
                        new Spread(0, 0),
                        new Spread(0, 0),
                        0,
                        0,
                        0),
                START,
                Sky.UNKNOWN);
        for (int i = 0; i < cells; i++) {
            temperature[i] = truth.temperature().middle().valueOrNaN(i) + 0.1 * random.nextGaussian();
            humidity[i] = Math.min(100, truth.humidity().middle().valueOrNaN(i) + random.nextGaussian());
        }
        return SensoredBag.of(
                house,
                new Climate(
                        RegularSeries.of(grid, temperature),
                        RegularSeries.of(grid, humidity),
                        RegularSeries.unknown(grid)));
    }

    private static Climate shifted(Climate climate, double warmer, double damper) {
        double[] temperature = climate.temperature().toArray();
        double[] humidity = climate.humidity().toArray();
        for (int i = 0; i < temperature.length; i++) {
            temperature[i] += warmer;
            humidity[i] += damper;
        }
        TimeGrid grid = climate.grid();
        return new Climate(RegularSeries.of(grid, temperature), RegularSeries.of(grid, humidity), climate.light());
    }

    private static RegularSeries constant(TimeGrid grid, double value) {
        double[] values = new double[grid.size()];
        Arrays.fill(values, value);
        return RegularSeries.of(grid, values);
    }
}
