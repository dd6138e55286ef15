package bagward.station;

import bagward.climate.SensorId;
import bagward.document.Section;
import bagward.fault.ImpossibleValueException;
import bagward.units.Quantity;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Reads the station from its configuration: the mapping {@code station}, the list {@code houses} and, of each entry of
 * the list {@code sensors}, what and where the sensor is. How a sensor is heard is read by the collector from the same
 * entries, which is why entries are handed over and not ended here.
 */
public final class StationReader {
    private static final Duration SHORTEST = Duration.ofSeconds(1);
    private static final Duration LONGEST = Duration.ofHours(24);
    private static final Map<String, Quantity> QUANTITIES =
            Arrays.stream(Quantity.values()).collect(Collectors.toMap(Quantity::word, Function.identity()));

    private static final Map<String, HouseUse> USES =
            Arrays.stream(HouseUse.values()).collect(Collectors.toMap(HouseUse::word, Function.identity()));

    private StationReader() {}

    /**
     * Reads the station.
     *
     * @param station the mapping {@code station}: name, latitude, longitude, elevation (m), time-zone
     * @param houses entries of the list {@code houses}: id, name, use, and of a growing house bays (id, name, spots, across)
     * @param sensors entries of the list {@code sensors}: id, name, house, bay, spare, every, reads (quantity)
     * @return the station; empty if anything was refused
     */
    public static Optional<Station> read(Section station, List<Section> houses, List<Section> sensors) {
        String name = station.text("name");
        double latitude = station.number("latitude", -90, 90, "° (north positive)");
        double longitude = station.number("longitude", -180, 180, "° (east positive)");
        double elevation = station.number("elevation", -430, 6000, "m", 0);
        Optional<ZoneId> zone = station.value("time-zone", StationReader::zone);
        List<House> read = houses(houses);
        // A house that was refused must not make faults of the sensors that hang in it.
        boolean allHouses = read.size() == houses.size();
        List<Sensor> devices = sensors(sensors, read, allHouses);
        return station.make(() ->
                        new Station(name, latitude, longitude, elevation, zone.orElse(ZoneId.of("UTC")), read, devices))
                .filter(whole -> allHouses && devices.size() == sensors.size());
    }

    private static ZoneId zone(String text) {
        try {
            return ZoneId.of(text);
        } catch (DateTimeException e) {
            throw new ImpossibleValueException("must be the name of a time zone, such as Europe/Dublin");
        }
    }

    private static List<House> houses(List<Section> entries) {
        List<House> houses = new ArrayList<>();
        Set<HouseId> used = new HashSet<>();
        for (Section entry : entries) {
            Optional<HouseId> id = entry.value("id", HouseId::new);
            id.filter(i -> !used.add(i))
                    .ifPresent(i -> entry.refuse("id", "is used by another house: give each its own"));
            String name = entry.text("name");
            HouseUse use = entry.choice("use", USES, HouseUse.GROWING);
            List<Bay> bays = use == HouseUse.DRYING ? noBays(entry) : bays(entry.sections("bays", 1));
            entry.make(() -> new House(id.orElseThrow(), name, bays, use)).ifPresent(houses::add);
        }
        return houses;
    }

    private static List<Bay> noBays(Section entry) {
        if (entry.has("bays")) {
            entry.refuse(
                    "bays",
                    "cannot be given for a drying place, since no bags are put on there",
                    "Leave bays out, or leave out use: drying.");
        }
        return List.of();
    }

    private static List<Bay> bays(List<Section> entries) {
        List<Bay> bays = new ArrayList<>();
        Set<BayId> used = new HashSet<>();
        for (Section entry : entries) {
            Optional<BayId> id = entry.value("id", BayId::new);
            id.filter(i -> !used.add(i))
                    .ifPresent(i -> entry.refuse("id", "is used by another bay of this house: give each its own"));
            String name = entry.text("name");
            int spots = entry.whole("spots", 1, 999, "spots");
            int across = entry.whole("across", 1, spots, "spots", spots);
            entry.make(() -> new Bay(id.orElseThrow(), name, spots, across)).ifPresent(bays::add);
        }
        return bays;
    }

    private static List<Sensor> sensors(List<Section> entries, List<House> houses, boolean allHouses) {
        List<Sensor> sensors = new ArrayList<>();
        Set<SensorId> used = new HashSet<>();
        for (Section entry : entries) {
            Optional<SensorId> id = entry.value("id", SensorId::new);
            id.filter(i -> !used.add(i))
                    .ifPresent(i -> entry.refuse("id", "is used by another sensor: give each its own"));
            sensor(entry, id, houses, allHouses).ifPresent(sensors::add);
        }
        return sensors;
    }

    private static Optional<Sensor> sensor(
            Section entry, Optional<SensorId> id, List<House> houses, boolean allHouses) {
        Optional<HouseId> houseId = entry.value("house", HouseId::new);
        Optional<House> house = houseId.flatMap(
                wanted -> houses.stream().filter(h -> h.id().equals(wanted)).findFirst());
        if (houseId.isPresent() && house.isEmpty() && allHouses) {
            entry.refuse("house", "must be the id of one of the houses");
        }
        Optional<BayId> bay = entry.findValue("bay", BayId::new);
        if (bay.isPresent()
                && house.isPresent()
                && house.get().findBay(bay.get()).isEmpty()) {
            entry.refuse(
                    "bay", "must be the id of a bay of house " + house.get().id());
        }
        String name = entry.text("name", id.map(SensorId::value).orElse(""));
        boolean spare = entry.flag("spare", false);
        Duration every = entry.duration("every", SHORTEST, LONGEST, Duration.ofMinutes(1));
        Set<Quantity> quantities = quantities(entry.sections("reads", 1));
        if (id.isEmpty() || house.isEmpty() || quantities.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Sensor(id.get(), name, house.get().id(), bay, spare, quantities, every));
    }

    private static Set<Quantity> quantities(List<Section> reads) {
        Set<Quantity> quantities = EnumSet.noneOf(Quantity.class);
        for (Section read : reads) {
            read.choice("quantity", QUANTITIES)
                    .filter(q -> !quantities.add(q))
                    .ifPresent(q -> read.refuse("quantity", "is read twice by this sensor: keep one of them"));
        }
        return quantities;
    }
}
