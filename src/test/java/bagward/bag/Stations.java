package bagward.bag;

import bagward.climate.SensorId;
import bagward.station.Bay;
import bagward.station.BayId;
import bagward.station.House;
import bagward.station.HouseId;
import bagward.station.Sensor;
import bagward.station.Spot;
import bagward.station.Station;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** An invented station for the tests of this room. */
final class Stations {
    static final MaterialId PAPER = new MaterialId("paper");
    static final MaterialId MESH = new MaterialId("mesh");
    static final SensorId SPARE = new SensorId("spare-1");
    static final SensorId OTHER_SPARE = new SensorId("spare-2");
    static final SensorId FIXED = new SensorId("north-1");
    static final HouseId NORTH = new HouseId("north");
    static final HouseId SEEDS = new HouseId("seeds");
    static final ZoneId ZONE = ZoneId.of("Europe/Prague");

    private Stations() {}

    static Station station() {
        House house = new House(NORTH, "North house", List.of(new Bay(new BayId("a"), "Bench A", 12, 4)));
        return new Station(
                "Station Hazelmere",
                50.1,
                14.4,
                230,
                ZONE,
                List.of(house, House.drying(SEEDS, "Seed room")),
                List.of(sensor(FIXED, false), sensor(SPARE, true), sensor(OTHER_SPARE, true)));
    }

    static Spot spot(int number) {
        return new Spot(NORTH, new BayId("a"), number);
    }

    static BagMaterial paper() {
        return new BagMaterial(
                PAPER,
                "Paper",
                new Spread(0.4, 0.12),
                new Spread(0.35, 0.13),
                new Spread(0.02, 0.006),
                new Spread(8, 3),
                Duration.ofDays(7),
                "prior");
    }

    private static Sensor sensor(SensorId id, boolean spare) {
        return new Sensor(
                id,
                id.value(),
                NORTH,
                Optional.empty(),
                spare,
                Set.of(Quantity.TEMPERATURE, Quantity.HUMIDITY),
                Duration.ofMinutes(5));
    }
}
