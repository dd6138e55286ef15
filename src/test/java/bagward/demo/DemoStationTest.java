package bagward.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.BagCsv;
import bagward.bag.BagMaterial;
import bagward.bag.BagMaterialsReader;
import bagward.bag.HeadState;
import bagward.bag.MaterialId;
import bagward.bag.Register;
import bagward.bag.RegisterChange;
import bagward.bag.RegisterRules;
import bagward.climate.Site;
import bagward.document.Inspection;
import bagward.document.Section;
import bagward.station.Station;
import bagward.station.StationReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class DemoStationTest {
    private final Station station = station();
    private final Register register = register();

    @Test
    void the_station_has_two_houses_and_hangs_where_its_simulation_thinks() {
        assertEquals(2, station.houses().size());
        assertEquals(DemoStation.SITE, new Site(station.latitude(), station.longitude(), station.elevation()));
        assertEquals(DemoStation.ZONE, station.zone());
    }

    @Test
    void every_configured_sensor_is_simulated_and_one_stranger_beside_them() {
        Set<String> configured =
                station.sensors().stream().map(s -> s.id().value()).collect(Collectors.toSet());
        Set<String> simulated = DemoSensors.all().stream().map(DemoSensor::id).collect(Collectors.toSet());
        assertTrue(simulated.containsAll(configured), configured + " against " + simulated);
        assertEquals(configured.size() + 1, simulated.size());
    }

    @Test
    void some_forty_heads_stand_in_the_register_and_most_of_them_are_bagged() {
        Map<HeadState, Long> states = register.heads().stream()
                .collect(Collectors.groupingBy(h -> h.stateAt(DemoStation.NOW), Collectors.counting()));
        assertEquals(Set.of(HeadState.BAGGED, HeadState.BARE, HeadState.HARVESTED, HeadState.LOST), states.keySet());
        assertTrue(register.heads().size() >= 38 && register.heads().size() <= 45, "heads " + states);
        assertTrue(states.getOrDefault(HeadState.BAGGED, 0L) >= 25, "bagged " + states);
    }

    @Test
    void one_bag_is_overdue_by_days_and_a_few_come_off_today() {
        List<Instant> putOn = register.heads().stream()
                .flatMap(h -> h.baggingAt(DemoStation.NOW).stream())
                .map(b -> b.putOn())
                .toList();
        Instant overdue = DemoStation.NOW.minus(Duration.ofDays(9));
        Instant dueToday = DemoStation.NOW.minus(Duration.ofHours(6 * 24 + 12));
        assertEquals(1, putOn.stream().filter(p -> p.isBefore(overdue)).count());
        assertEquals(3, putOn.stream().filter(p -> p.isBefore(dueToday)).count());
    }

    @Test
    void sensors_hang_in_their_bags_from_the_moment_the_simulation_puts_them_there() {
        Map<String, Instant> loans = register.loans().stream()
                .collect(Collectors.toMap(l -> l.sensor().value(), l -> l.from()));
        assertEquals(Map.of("spare-1", DemoStation.FIRST_LENT, "spare-2", DemoStation.SECOND_LENT), loans);
    }

    @Test
    void nothing_in_the_register_lies_in_the_future() {
        List<RegisterChange> late =
                changes().stream().filter(c -> c.at().isAfter(DemoStation.NOW)).toList();
        assertEquals(List.of(), late);
    }

    private static Station station() {
        Inspection inspection = new Inspection();
        Section top = Section.parse("demo.yaml", DemoStation.configuration(), inspection);
        return StationReader.read(top.section("station"), top.sections("houses", 1), top.sections("sensors", 1))
                .orElseThrow(() -> new AssertionError(inspection.faults().toString()));
    }

    private Register register() {
        return new RegisterRules(station, materials()).apply(Register.EMPTY, changes());
    }

    private static Set<MaterialId> materials() {
        Inspection inspection = new Inspection();
        Section top = Section.parse("bag-materials.yaml", seed("bag-materials.yaml"), inspection);
        return BagMaterialsReader.read(top).stream().map(BagMaterial::id).collect(Collectors.toSet());
    }

    private static String seed(String name) {
        try {
            return Files.readString(Path.of("seeds", name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<RegisterChange> changes() {
        List<RegisterChange> changes = new ArrayList<>(new BagCsv(station.zone()).read(DemoStation.bags()));
        changes.addAll(DemoStation.furtherChanges());
        return changes;
    }
}
