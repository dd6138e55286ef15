package bagward.alarm;

import bagward.bag.TagCode;
import bagward.climate.SensorId;
import bagward.station.HouseId;

/** What an alarm is about: exactly one thing. */
public sealed interface Subject {
    /** Stable text form, for storage and addresses: kind, ':', name. */
    String key();

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
