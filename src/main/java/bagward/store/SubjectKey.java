package bagward.store;

import bagward.alarm.Subject;
import bagward.bag.TagCode;
import bagward.climate.SensorId;
import bagward.station.HouseId;

/** Reads back what {@link Subject#key()} wrote. */
final class SubjectKey {
    private SubjectKey() {}

    /** The subject of a key. */
    static Subject parse(String key) {
        int colon = key.indexOf(':');
        String name = key.substring(colon + 1);
        return switch (key.substring(0, Math.max(colon, 0))) {
            case "bag" -> new Subject.Bag(new TagCode(name));
            case "house" -> new Subject.InHouse(new HouseId(name));
            case "sensor" -> new Subject.OfSensor(new SensorId(name));
            case "system" -> new Subject.OfSystem(name);
            default ->
                throw new StoreException("the store holds an alarm about the unknown subject '" + key
                        + "': use the newer Bagward that wrote it");
        };
    }
}
