package bagward.board;

import bagward.alarm.Subject;
import bagward.bag.Head;
import bagward.bag.Register;
import bagward.station.Bay;
import bagward.station.BayId;
import bagward.station.HouseId;
import bagward.station.Sensor;
import bagward.station.Spot;
import bagward.station.Station;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The order in which a person walks the station: houses and bays as configured, spots by number. */
final class WalkingOrder {
    private static final int NOWHERE = Integer.MAX_VALUE;
    private static final int SPOTS_A_BAY = 1000;

    private final Map<HouseId, Integer> houses = new HashMap<>();
    private final Map<Place, Integer> bays = new HashMap<>();
    private final Station station;

    WalkingOrder(Station station) {
        this.station = station;
        int step = 0;
        for (var house : station.houses()) {
            houses.put(house.id(), step++);
            for (Bay bay : house.bays()) {
                bays.put(new Place(house.id(), bay.id()), step++);
            }
        }
    }

    /** Heads by where they stand; those on spots that are no longer configured come last. */
    Comparator<Head> heads() {
        return Comparator.comparingLong((Head head) -> rank(head.spot())).thenComparing(Head::spot);
    }

    /** Where a subject comes in the walk: a house before its bays, what has no place last. */
    long rank(Subject subject, Register register) {
        if (subject instanceof Subject.Bag bag) {
            return register.find(bag.tag()).map(head -> rank(head.spot())).orElse((long) NOWHERE * SPOTS_A_BAY);
        }
        if (subject instanceof Subject.InHouse in) {
            return rank(in.house(), Optional.empty());
        }
        if (subject instanceof Subject.OfSensor of) {
            Optional<Sensor> sensor = station.findSensor(of.sensor());
            return sensor.map(s -> rank(s.house(), s.bay())).orElse((long) NOWHERE * SPOTS_A_BAY);
        }
        return (long) NOWHERE * SPOTS_A_BAY;
    }

    private long rank(Spot spot) {
        return rank(spot.house(), Optional.of(spot.bay())) + spot.number();
    }

    private long rank(HouseId house, Optional<BayId> bay) {
        int step = bay.map(b -> bays.getOrDefault(new Place(house, b), NOWHERE))
                .orElseGet(() -> houses.getOrDefault(house, NOWHERE));
        return (long) step * SPOTS_A_BAY;
    }

    private record Place(HouseId house, BayId bay) {}
}
