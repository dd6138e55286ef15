package bagward.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Finding.Oddity;
import bagward.fault.ImpossibleValueException;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SensorSenseTest {
    private static final SeriesId TEMPERATURE = new SeriesId(new SensorId("s"), Quantity.TEMPERATURE);
    private static final SeriesId HUMIDITY = new SeriesId(new SensorId("s"), Quantity.HUMIDITY);

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -40.1, 80.1})
    void what_cannot_be_never_becomes_a_reading(double celsius) {
        assertThrows(ImpossibleValueException.class, () -> Reading.of(TEMPERATURE, Days.MIDNIGHT, celsius));
    }

    @Test
    void an_ordinary_day_gives_no_finding() {
        List<Reading> day = readings(TEMPERATURE, 48, SensorSenseTest::ordinaryDay);
        List<Reading> humidity = readings(HUMIDITY, 48, hour -> 70 - 15 * Math.sin(2 * Math.PI * hour / 24));
        for (List<Reading> series : List.of(day, humidity)) {
            assertEquals(List.of(), SensorSense.suspectValues(series));
            assertEquals(List.of(), SensorSense.steps(series));
            assertEquals(List.of(), SensorSense.fastChanges(series));
            assertEquals(List.of(), SensorSense.noChanges(series));
        }
    }

    @Test
    void a_temperature_that_a_house_hardly_has_is_suspect() {
        List<Finding> found = SensorSense.suspectValues(readings(TEMPERATURE, 1, hour -> hour < 0.05 ? 51 : 50));
        assertEquals(1, found.size());
        assertEquals(51, found.get(0).amount());
    }

    @Test
    void a_jump_is_found_with_its_size() {
        List<Reading> readings = readings(TEMPERATURE, 2, hour -> hour < 1 ? 20 : 23.5);
        Finding step = SensorSense.steps(readings).get(0);
        assertEquals(Oddity.STEP, step.oddity());
        assertEquals(3.5, step.amount(), 1e-9);
        assertEquals(Days.hours(55.0 / 60, 1), step.when());
        List<Reading> damp = readings(HUMIDITY, 2, hour -> hour < 1 ? 60 : 71);
        assertEquals(11, SensorSense.steps(damp).get(0).amount(), 1e-9);
    }

    @Test
    void a_change_over_an_hour_of_silence_is_no_jump() {
        List<Reading> two = List.of(
                Reading.of(TEMPERATURE, Days.MIDNIGHT, 15),
                Reading.of(TEMPERATURE, Days.MIDNIGHT.plus(Duration.ofHours(1)), 20));
        assertEquals(List.of(), SensorSense.steps(two));
    }

    @Test
    void a_fast_rise_is_named_with_the_hours_it_took() {
        List<Reading> readings = readings(TEMPERATURE, 12, hour -> hour < 6 ? 15 : Math.min(20, 15 + 5 * (hour - 6)));
        List<Finding> found = SensorSense.fastChanges(readings);
        assertEquals(1, found.size());
        assertEquals(5, found.get(0).amount(), 1e-9);
        assertEquals(Duration.ofHours(1), found.get(0).when().length());
    }

    @Test
    void a_frozen_sensor_is_found_once_from_start_to_end() {
        List<Reading> frozen = readings(TEMPERATURE, 24, hour -> hour < 18 ? 20.1 : 25);
        List<Finding> found = SensorSense.noChanges(frozen);
        assertEquals(1, found.size());
        assertEquals(Days.hours(0, 18 - 5.0 / 60), found.get(0).when());
        assertEquals(0, found.get(0).amount());
    }

    @Test
    void humidity_may_stand_still_near_saturation_and_not_below() {
        assertEquals(List.of(), SensorSense.noChanges(readings(HUMIDITY, 24, hour -> 99)));
        assertEquals(
                1, SensorSense.noChanges(readings(HUMIDITY, 24, hour -> 70)).size());
    }

    @Test
    void few_readings_do_not_make_a_frozen_sensor() {
        assertEquals(List.of(), SensorSense.noChanges(readings(TEMPERATURE, 6, hour -> 20)));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void findings_do_not_depend_on_the_order_of_arrival(long seed) {
        Random random = new Random(seed);
        List<Reading> readings = new ArrayList<>(readings(TEMPERATURE, 48, hour -> 20 + 6 * random.nextGaussian()));
        readings.addAll(shifted(readings(TEMPERATURE, 14, hour -> 20), Duration.ofHours(60)));
        List<List<Finding>> once = all(readings);
        Collections.shuffle(readings, random);
        assertEquals(once, all(readings));
        once.forEach(kind -> assertTrue(!kind.isEmpty()));
    }

    @Test
    void a_sensor_that_stays_at_the_top_while_the_air_warms_is_stuck_wet() {
        RegularSeries temperature = Days.of(5, SensorSenseTest::ordinaryDay);
        RegularSeries stuck = Days.of(5, hour -> hour < 12 ? 99.5 : 60);
        List<Finding> found = StuckWet.find(HUMIDITY, temperature, stuck);
        assertEquals(1, found.size());
        assertEquals(Days.hours(0, 12), found.get(0).when());
        assertTrue(found.get(0).amount() > 4);
    }

    @Test
    void a_damp_night_is_not_a_stuck_sensor() {
        RegularSeries temperature = Days.of(5, SensorSenseTest::ordinaryDay);
        RegularSeries damp = Days.of(5, hour -> hour < 6 ? 99.5 : 60);
        assertEquals(List.of(), StuckWet.find(HUMIDITY, temperature, damp));
        RegularSeries holed = Days.of(5, hour -> hour > 7 && hour < 7.5 ? Double.NaN : 99.5);
        assertEquals(2, StuckWet.find(HUMIDITY, Days.of(5, hour -> hour), holed).size());
    }

    private static double ordinaryDay(double hour) {
        return 18 - 4 * Math.cos(2 * Math.PI * (hour - 3) / 24);
    }

    private static List<List<Finding>> all(List<Reading> readings) {
        return List.of(SensorSense.steps(readings), SensorSense.fastChanges(readings), SensorSense.noChanges(readings));
    }

    private static List<Reading> shifted(List<Reading> readings, Duration by) {
        return readings.stream()
                .map(r -> Reading.of(r.series(), r.measuredAt().plus(by), r.value()))
                .toList();
    }

    /** One reading in five minutes; the function takes the hour. */
    private static List<Reading> readings(SeriesId series, int hours, DoubleUnaryOperator value) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < hours * 12; i++) {
            Instant at = Days.MIDNIGHT.plus(Duration.ofMinutes(5L * i));
            readings.add(Reading.of(series, at, value.applyAsDouble(i / 12.0)));
        }
        return readings;
    }
}
