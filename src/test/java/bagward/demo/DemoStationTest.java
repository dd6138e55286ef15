package bagward.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.HeadState;
import bagward.bag.Register;
import bagward.bag.RegisterChange;
import bagward.climate.Site;
import bagward.station.Station;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class DemoStationTest {
    private final DemoDocuments documents = new DemoDocuments();
    private final Station station = documents.station();
    private final Register register = documents.register();

    @Test
    void the_station_has_two_houses_and_a_seed_room_and_hangs_where_its_simulation_thinks() {
        assertEquals(2, station.growing().size());
        assertEquals(1, station.drying().size());
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
        List<RegisterChange> late = documents.changes().stream()
                .filter(c -> c.at().isAfter(DemoStation.NOW))
                .toList();
        assertEquals(List.of(), late);
    }
}
