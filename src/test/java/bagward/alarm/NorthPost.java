package bagward.alarm;

import bagward.climate.SensorId;
import bagward.station.HouseId;
import bagward.station.Sensor;
import bagward.units.Quantity;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;

/** A sensor for tests of rules about sensors, expected every minute. */
final class NorthPost {
    private NorthPost() {}

    static Sensor measuring(Quantity... quantities) {
        return new Sensor(
                new SensorId("t1"),
                "North post",
                new HouseId("north"),
                Optional.empty(),
                false,
                Set.of(quantities),
                Duration.ofMinutes(1));
    }
}
