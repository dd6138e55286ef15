package bagward.board;

import bagward.alarm.Subject;
import bagward.bag.Head;
import bagward.station.Bay;
import bagward.station.BayId;
import bagward.station.House;
import bagward.station.HouseId;
import bagward.station.Spot;
import java.util.Optional;

/** Names of places as people call them. */
public final class PlaceNames {
    private PlaceNames() {}

    /** Name of a house; its short name if the board does not know it. */
    public static String house(Board board, HouseId id) {
        return find(board, id).map(House::name).orElse(id.value());
    }

    /** Name of a bay; its short name if the board does not know it. */
    public static String bay(Board board, HouseId house, BayId id) {
        return find(board, house).flatMap(h -> h.findBay(id)).map(Bay::name).orElse(id.value());
    }

    /** House and bay of an alarm: those of its spot, the house of its sensor; empty for a part of the system. */
    public static String ofAlarm(Board board, AlarmView view) {
        if (view.spot().isPresent()) {
            Spot spot = view.spot().get();
            return house(board, spot.house()) + ", " + bay(board, spot.house(), spot.bay());
        }
        Subject subject = view.alarm().key().subject();
        if (subject instanceof Subject.InHouse in) {
            return house(board, in.house());
        }
        return sensor(board, subject)
                .map(sensor -> house(board, sensor.sensor().house()))
                .orElse("");
    }

    /** What an alarm is about within its place: "spot 4, L-104", "14 bags" of a house, the name of a sensor or part. */
    public static String subject(Board board, AlarmView view) {
        Subject subject = view.alarm().key().subject();
        if (subject instanceof Subject.Bag bag) {
            return view.spot().map(spot -> "spot " + spot.number() + ", ").orElse("") + bag.tag();
        }
        if (subject instanceof Subject.InHouse) {
            return view.bags().isEmpty() ? "the house" : view.bags().size() + " bags";
        }
        return sensor(board, subject)
                .map(sensor -> sensor.sensor().name())
                .orElse(subject.key().substring(subject.key().indexOf(':') + 1));
    }

    /** Where a head stands: "Alder house, Long bench, spot 4". */
    public static String head(Board board, Head head) {
        Spot spot = head.spot();
        return house(board, spot.house()) + ", " + bay(board, spot.house(), spot.bay()) + ", spot " + spot.number();
    }

    private static Optional<SensorView> sensor(Board board, Subject subject) {
        return board.sensors().stream()
                .filter(view ->
                        subject.equals(new Subject.OfSensor(view.sensor().id())))
                .findFirst();
    }

    private static Optional<House> find(Board board, HouseId id) {
        return board.places().stream().filter(h -> h.id().equals(id)).findFirst();
    }
}
