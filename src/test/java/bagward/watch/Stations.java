package bagward.watch;

import bagward.board.BoardInputs;
import bagward.board.Scenario;
import bagward.climate.SensorId;
import bagward.station.Sensor;
import bagward.station.Station;
import java.time.Duration;
import java.util.List;

/** The scenario of the board's tests as a running watch knows it. */
final class Stations {
    private static final BoardInputs SCENARIO = new Scenario(20).at(0);

    private Stations() {}

    /** Station, materials, rules and organisms of the scenario. */
    static Knowledge knowledge() {
        return new Knowledge(
                SCENARIO.station(), List.copyOf(SCENARIO.materials().values()), SCENARIO.rules(), SCENARIO.organisms());
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
