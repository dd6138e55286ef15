package bagward.station;

import bagward.climate.SensorId;
import bagward.units.Checks;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * The station: where it is, its houses and its sensors.
 *
 * @param name as people call it
 * @param latitude degrees, north positive
 * @param longitude degrees, east positive
 * @param elevation m above sea level
 * @param zone zone of all times on screens
 * @param houses in walking order, the places for drying among them
 * @param sensors in the order of the configuration
 */
public record Station(
        String name,
        double latitude,
        double longitude,
        double elevation,
        ZoneId zone,
        List<House> houses,
        List<Sensor> sensors) {
    /** Refuses a place that is not on the globe; copies the lists. */
    public Station {
        Checks.within("latitude", latitude, -90, 90, "°");
        Checks.within("longitude", longitude, -180, 180, "°");
        Checks.within("elevation", elevation, -430, 6000, "m");
        houses = List.copyOf(houses);
        sensors = List.copyOf(sensors);
    }

    /** The houses in which plants grow, in walking order. */
    public List<House> growing() {
        return houses.stream().filter(house -> !house.isForDrying()).toList();
    }

    /** The places in which seed dries, in walking order. */
    public List<House> drying() {
        return houses.stream().filter(House::isForDrying).toList();
    }

    /** The house of a name. */
    public Optional<House> findHouse(HouseId id) {
        return houses.stream().filter(h -> h.id().equals(id)).findFirst();
    }

    /** The sensor of a name. */
    public Optional<Sensor> findSensor(SensorId id) {
        return sensors.stream().filter(s -> s.id().equals(id)).findFirst();
    }

    /** Whether a spot exists: its house, its bay there, and a number that the bay has. */
    public boolean has(Spot spot) {
        return findHouse(spot.house())
                .flatMap(h -> h.findBay(spot.bay()))
                .filter(b -> spot.number() <= b.spots())
                .isPresent();
    }
}
