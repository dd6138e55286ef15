package bagward.station;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.climate.Climate;
import bagward.climate.FixedReadings;
import bagward.climate.Reading;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.climate.TimeGrid;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PlaceClimatesTest {
    private static final Instant START = Instant.parse("2026-04-20T06:00:00Z");
    private static final TimeGrid GRID = new TimeGrid(START, Duration.ofMinutes(1), 4);
    private static final HouseId HOUSE = new HouseId("north");
    private static final Optional<BayId> BAY = Optional.of(new BayId("a"));
    private static final Set<Quantity> AIR = EnumSet.of(Quantity.TEMPERATURE, Quantity.HUMIDITY);

    private final List<Sensor> sensors = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();

    @Test
    void a_bay_has_the_climate_of_its_own_sensor_and_what_that_lacks_from_the_house() {
        sensor("house", Optional.empty(), false, EnumSet.allOf(Quantity.class));
        sensor("bay", BAY, false, AIR);
        heard("house", Quantity.TEMPERATURE, 20);
        heard("house", Quantity.LIGHT, 300);
        heard("bay", Quantity.TEMPERATURE, 25);
        Climate climate = climate(BAY);
        assertArrayEquals(
                new double[] {25, 25, 25, Double.NaN}, climate.temperature().toArray());
        assertArrayEquals(
                new double[] {300, 300, 300, Double.NaN}, climate.light().toArray());
    }

    @Test
    void a_silent_bay_sensor_is_a_gap_and_not_the_house() {
        sensor("house", Optional.empty(), false, AIR);
        sensor("bay", BAY, false, AIR);
        heard("house", Quantity.TEMPERATURE, 20);
        assertEquals(Double.NaN, climate(BAY).temperature().valueOrNaN(0));
    }

    @Test
    void a_spare_sensor_never_counts() {
        sensor("house", Optional.empty(), false, AIR);
        sensor("spare", Optional.empty(), true, AIR);
        heard("house", Quantity.TEMPERATURE, 20);
        heard("spare", Quantity.TEMPERATURE, 40);
        assertEquals(20, climate(Optional.empty()).temperature().valueOrNaN(0));
    }

    @Test
    void a_house_without_a_sensor_of_its_own_is_known_from_its_bays() {
        sensor("bay", BAY, false, AIR);
        heard("bay", Quantity.TEMPERATURE, 18);
        assertEquals(18, climate(Optional.empty()).temperature().valueOrNaN(0));
    }

    @Test
    void of_three_sensors_the_median_counts_and_the_one_apart_is_named() {
        for (String name : List.of("one", "two", "three")) {
            sensor(name, Optional.empty(), false, AIR);
        }
        heard("one", Quantity.TEMPERATURE, 20);
        heard("two", Quantity.TEMPERATURE, 21);
        heard("three", Quantity.TEMPERATURE, 60);
        assertEquals(21, climate(Optional.empty()).temperature().valueOrNaN(0));
        List<PlaceClimates.Disagreement> apart =
                PlaceClimates.disagreements(station(), HOUSE, Optional.empty(), new FixedReadings(readings), GRID);
        SeriesId three = new SeriesId(new SensorId("three"), Quantity.TEMPERATURE);
        assertEquals(List.of(new PlaceClimates.Disagreement(three, Duration.ofMinutes(3))), apart);
    }

    private Climate climate(Optional<BayId> bay) {
        return PlaceClimates.climate(station(), HOUSE, bay, new FixedReadings(readings), GRID);
    }

    private Station station() {
        House house = new House(HOUSE, "North house", List.of(new Bay(new BayId("a"), "A", 10, 2)));
        return new Station("Test", 52, 5.6, 10, ZoneId.of("Europe/Amsterdam"), List.of(house), sensors);
    }

    private void sensor(String name, Optional<BayId> bay, boolean spare, Set<Quantity> quantities) {
        sensors.add(new Sensor(new SensorId(name), name, HOUSE, bay, spare, quantities, Duration.ofMinutes(1)));
    }

    private void heard(String sensor, Quantity quantity, double value) {
        readings.add(Reading.of(new SeriesId(new SensorId(sensor), quantity), START, value));
    }
}
