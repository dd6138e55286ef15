package bagward.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.SensorId;
import bagward.document.Inspection;
import bagward.document.Section;
import bagward.fault.Fault;
import bagward.units.Quantity;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class StationReaderTest {
    private static final String GOOD = """
            station: {name: Alder Bank, latitude: 53.2, longitude: -7.1, elevation: 60, time-zone: Europe/Dublin}
            houses:
            - id: north
              name: North house
              bays:
              - {id: n1, name: Long bench, spots: 12, across: 4}
            sensors:
            - id: north-air
              house: north
              every: 2 min
              reads: [{quantity: temperature}, {quantity: humidity}]
            """;

    private final Inspection inspection = new Inspection();

    private Optional<Station> read(String text) {
        Section top = Section.parse("test.yaml", text, inspection);
        return StationReader.read(top.section("station"), top.sections("houses", 1), top.sections("sensors", 0));
    }

    private List<String> sentences() {
        return inspection.faults().stream().map(Fault::sentence).toList();
    }

    @Test
    void a_station_is_read_with_houses_bays_and_sensors() {
        Station station = read(GOOD).orElseThrow();
        assertEquals("Alder Bank", station.name());
        assertTrue(station.has(new Spot(new HouseId("north"), new BayId("n1"), 12)));
        Sensor sensor = station.findSensor(new SensorId("north-air")).orElseThrow();
        assertEquals(Duration.ofMinutes(2), sensor.expectedEvery());
        assertEquals(Set.of(Quantity.TEMPERATURE, Quantity.HUMIDITY), sensor.quantities());
        assertEquals("north-air", sensor.name());
    }

    @Test
    void a_sensor_in_a_house_or_bay_that_is_not_there_is_refused() {
        assertTrue(read(GOOD.replace("house: north\n", "house: nroth\n")).isEmpty());
        assertEquals(
                List.of("test.yaml line 9, sensors[0].house: found 'nroth'; must be the id of one of the houses."),
                sentences());
    }

    @Test
    void a_drying_place_has_no_bays() {
        String room = "- {id: seeds, name: Seed room, use: drying}\nsensors:";
        Station station = read(GOOD.replace("sensors:", room)).orElseThrow();
        assertEquals(List.of(House.drying(new HouseId("seeds"), "Seed room")), station.drying());
        assertEquals(1, station.growing().size());
        assertTrue(
                read(GOOD.replace("sensors:", room.replace("drying}", "drying, bays: [{id: a, name: A, spots: 2}]}")))
                        .isEmpty());
        assertEquals(
                List.of("test.yaml line 7, houses[1].bays: cannot be given for a drying place, since no bags are put on"
                        + " there. Leave bays out, or leave out use: drying."),
                sentences());
    }

    @Test
    void a_growing_house_without_bays_and_an_unknown_use_are_refused() {
        read(GOOD.replace("sensors:", "- {id: x, name: X}\n- {id: y, name: Y, use: storing}\nsensors:"));
        assertEquals(3, sentences().size(), () -> sentences().toString());
        assertTrue(
                sentences().get(0).contains("houses[1].bays: must be a list of at least 1"),
                sentences().get(0));
    }

    @Test
    void ids_that_are_used_twice_are_refused() {
        assertTrue(read(GOOD.replace(
                        "- {id: n1, name: Long bench, spots: 12, across: 4}",
                        "- {id: n1, name: A, spots: 2}\n  - {id: n1, name: B, spots: 2}"))
                .isEmpty());
        assertEquals(
                List.of(
                        "test.yaml line 7, houses[0].bays[1].id: found 'n1'; is used by another bay of this house: give each"
                                + " its own."),
                sentences());
    }

    @Test
    void a_bay_wider_than_its_spots_and_an_unknown_zone_are_refused_together() {
        read(GOOD.replace("across: 4", "across: 13").replace("Europe/Dublin", "Erehwon"));
        assertEquals(
                List.of(
                        "test.yaml line 1, station.time-zone: found 'Erehwon'; must be the name of a time zone, such as"
                                + " Europe/Dublin.",
                        "test.yaml line 6, houses[0].bays[0].across: found '13'; must be a whole number from 1 to 12 spots."),
                sentences());
    }
}
