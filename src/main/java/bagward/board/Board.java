package bagward.board;

import bagward.bag.TagCode;
import bagward.station.House;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Everything that pages show, computed once a tick.
 *
 * @param at the time it was made for
 * @param station name of the station
 * @param zone zone of all times on screens
 * @param houses in which plants grow, in walking order
 * @param bags bags that are on, in walking order (house, bay and spot as configured)
 * @param sensors in the order of the configuration
 * @param alarms listed alarms: highest priority first, then in walking order
 * @param setAside alarms that are shelved, suppressed or out of service, in the same order
 * @param drying places in which seed dries, in walking order
 * @param newestReading when the newest reading of all was measured
 */
public record Board(
        Instant at,
        String station,
        ZoneId zone,
        List<HouseView> houses,
        List<BagView> bags,
        List<SensorView> sensors,
        List<AlarmView> alarms,
        List<AlarmView> setAside,
        List<DryingView> drying,
        Optional<Instant> newestReading) {
    /** Copies the lists. */
    public Board {
        houses = List.copyOf(houses);
        bags = List.copyOf(bags);
        sensors = List.copyOf(sensors);
        alarms = List.copyOf(alarms);
        setAside = List.copyOf(setAside);
        drying = List.copyOf(drying);
    }

    /** A board of a station without drying places. */
    public Board(
            Instant at,
            String station,
            ZoneId zone,
            List<HouseView> houses,
            List<BagView> bags,
            List<SensorView> sensors,
            List<AlarmView> alarms,
            List<AlarmView> setAside,
            Optional<Instant> newestReading) {
        this(at, station, zone, houses, bags, sensors, alarms, setAside, List.of(), newestReading);
    }

    /** A board on which no alarm is set aside, of a station without drying places. */
    public Board(
            Instant at,
            String station,
            ZoneId zone,
            List<HouseView> houses,
            List<BagView> bags,
            List<SensorView> sensors,
            List<AlarmView> alarms,
            Optional<Instant> newestReading) {
        this(at, station, zone, houses, bags, sensors, alarms, List.of(), newestReading);
    }

    /** All houses, those in which plants grow first. */
    public List<House> places() {
        return Stream.concat(
                        houses.stream().map(HouseView::house), drying.stream().map(DryingView::house))
                .toList();
    }

    /** The bag on a head. */
    public Optional<BagView> find(TagCode tag) {
        return bags.stream().filter(b -> b.head().tag().equals(tag)).findFirst();
    }
}
