package bagward.watch;

import bagward.bag.MaterialId;
import bagward.board.BoardInputs;
import bagward.board.Scenario;
import bagward.climate.SensorId;
import bagward.climate.WetnessRule;
import bagward.station.Sensor;
import bagward.station.Station;
import bagward.store.AlarmStore;
import bagward.store.SqliteStores;
import java.time.Clock;
import java.time.Duration;
import java.util.List;

/** The scenario of the board's tests as a running watch knows it. */
final class Stations {
    private static final BoardInputs SCENARIO = new Scenario(20).at(0);

    private Stations() {}

    /** The station of the scenario. */
    static Station station() {
        return SCENARIO.station();
    }

    /** The only bag material of the scenario. */
    static MaterialId material() {
        return SCENARIO.materials().keySet().iterator().next();
    }

    /** A watch of the scenario on these stores. */
    static WatchParts parts(Clock clock, SqliteStores stores, AlarmStore alarms) {
        return new WatchParts(
                clock,
                SCENARIO.station(),
                SCENARIO.materials(),
                SCENARIO.rules(),
                SCENARIO.organisms(),
                SCENARIO.crops(),
                WetnessRule.HumidityLimit.USUAL,
                stores.readings(),
                stores.quarantine(),
                new SensorChecks(stores.sensorChecks()),
                stores.register(),
                alarms);
    }

    /** The sensor that stands for the whole first house. */
    static Sensor post() {
        return SCENARIO.station().sensors().get(0);
    }

    /** A station whose only sensor has this name. */
    static Station heard(SensorId sensor) {
        Station like = SCENARIO.station();
        Sensor post = post();
        Sensor named =
                new Sensor(sensor, "named", post.house(), post.bay(), false, post.quantities(), Duration.ofMinutes(1));
        return new Station(
                like.name(),
                like.latitude(),
                like.longitude(),
                like.elevation(),
                like.zone(),
                like.houses(),
                List.of(named));
    }
}
