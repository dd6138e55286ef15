package bagward.alarm;

import bagward.bag.TagCode;
import bagward.climate.SensorId;
import bagward.fault.ImpossibleValueException;
import bagward.station.HouseId;

/** What an alarm is about: exactly one thing. */
public sealed interface Subject {
    /** Stable text form, for storage and addresses: kind, ':', name. */
    String key();

    /**
     * Reads back a {@link #key()}.
     *
     * @throws ImpossibleValueException if the kind is unknown or the name not allowed
     */
    static Subject parse(String key) {
        int colon = key.indexOf(':');
        String name = key.substring(colon + 1);
        return switch (key.substring(0, Math.max(colon, 0))) {
            case "bag" -> new Bag(new TagCode(name));
            case "house" -> new InHouse(new HouseId(name));
            case "sensor" -> new OfSensor(new SensorId(name));
            case "system" -> new OfSystem(name);
            default ->
                throw new ImpossibleValueException(
                        "subject '" + key + "' is not allowed: bag:TAG, house:NAME, sensor:NAME or system:PART");
        };
    }

    /** The bag on a head. */
    record Bag(TagCode tag) implements Subject {
        @Override
        public String key() {
            return "bag:" + tag;
        }
    }

    /** A house. */
    record InHouse(HouseId house) implements Subject {
        @Override
        public String key() {
            return "house:" + house;
        }
    }

    /** A sensor. */
    record OfSensor(SensorId sensor) implements Subject {
        @Override
        public String key() {
            return "sensor:" + sensor;
        }
    }

    /** A part of the system itself. */
    record OfSystem(String part) implements Subject {
        @Override
        public String key() {
            return "system:" + part;
        }
    }
}
