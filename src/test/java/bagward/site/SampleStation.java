package bagward.site;

import bagward.alarm.ActionCard;
import bagward.alarm.Priority;
import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.alarm.RuleKind;
import bagward.bag.BagMaterial;
import bagward.bag.CropId;
import bagward.bag.MaterialId;
import bagward.bag.Spread;
import bagward.climate.SensorId;
import bagward.mould.Crop;
import bagward.mould.HeatLimits;
import bagward.station.Bay;
import bagward.station.BayId;
import bagward.station.House;
import bagward.station.HouseId;
import bagward.station.Sensor;
import bagward.station.Station;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** An invented station, for the tests of the pages. */
final class SampleStation {
    static final ZoneId ZONE = ZoneId.of("Europe/Copenhagen");
    static final HouseId ALDER = new HouseId("alder");
    static final HouseId BIRCH = new HouseId("birch");
    static final BayId LONG = new BayId("long");
    static final BayId DOOR = new BayId("door");
    static final BayId NORTH = new BayId("north");
    static final BayId SOUTH = new BayId("south");
    static final SensorId SPARE_IN_USE = new SensorId("spare-1");
    static final SensorId SPARE = new SensorId("spare-2");
    static final SensorId SILENT = new SensorId("birch-air");

    private static final Set<Quantity> AIR = EnumSet.of(Quantity.TEMPERATURE, Quantity.HUMIDITY);

    static final Station STATION = new Station(
            "Lyngbakke seed station",
            55.9,
            10.1,
            30,
            ZONE,
            List.of(
                    new House(
                            ALDER,
                            "Alder house",
                            List.of(new Bay(LONG, "Long bench", 20, 4), new Bay(DOOR, "Door bench", 12, 3))),
                    new House(
                            BIRCH,
                            "Birch house",
                            List.of(new Bay(NORTH, "North bench", 15, 3), new Bay(SOUTH, "South bench", 15, 3))),
                    House.drying(new HouseId("loft"), "Seed loft")),
            List.of(
                    sensor("alder-air", "Alder air", ALDER, Optional.empty(), false, AIR),
                    sensor("alder-light", "Alder light", ALDER, Optional.empty(), false, Set.of(Quantity.LIGHT)),
                    sensor("alder-door", "Alder door bench", ALDER, Optional.of(DOOR), false, AIR),
                    sensor(SILENT.value(), "Birch air", BIRCH, Optional.empty(), false, AIR),
                    sensor("birch-light", "Birch light", BIRCH, Optional.empty(), false, Set.of(Quantity.LIGHT)),
                    sensor(SPARE_IN_USE.value(), "Spare 1", ALDER, Optional.empty(), true, AIR),
                    sensor(SPARE.value(), "Spare 2", BIRCH, Optional.empty(), true, AIR)));

    static final List<BagMaterial> MATERIALS = List.of(
            material("pricked-film", "Film, pricked by pin", 7), material("crisp-paper", "Greaseproof paper", 7));

    /** What flowers bear there. */
    static final HeatLimits HEAT = new HeatLimits(27, 30, Duration.ofHours(3), 33, "invented");

    static final List<Crop> CROPS = List.of(crop("oleracea", "Brassica oleracea"), crop("napus", "Brassica napus"));

    static final Rule DAMP = rule(
            "damp-long",
            "Damp for too long",
            RuleKind.BAG_DAMP,
            90,
            Priority.HIGH,
            new ActionCard(
                    "Swap the bag for a dry one and spread its sticks",
                    "Water on buds lets grey mould in within a night",
                    "Before this evening",
                    "The humidity in the bag is below 85 %RH an hour later",
                    "If you see mould, open the bag away from your face. Brassica pollen can cause allergy: follow your"
                            + " local rules."));
    static final Rule HOT = rule(
            "hot",
            "Hot in the bag",
            RuleKind.BAG_HOT,
            30,
            Priority.MEDIUM,
            new ActionCard(
                    "Shade the bench or open the vents",
                    "Heat above 30 °C harms pollen and young pods",
                    "Before noon",
                    "The bag is below 28 °C",
                    "A hot house harms people first: keep work short, drink, leave when you feel unwell."));
    static final Rule DUE = rule(
            "due",
            "Due to come off",
            RuleKind.BAG_DUE,
            0,
            Priority.LOW,
            new ActionCard(
                    "Take the bag off",
                    "Longer in the bag costs seed quality",
                    "Today",
                    "The head is in the open",
                    ""));
    static final Rule OVERDUE = rule(
            "overdue",
            "Overdue",
            RuleKind.BAG_DUE,
            2,
            Priority.MEDIUM,
            new ActionCard(
                    "Take the bag off",
                    "Longer in the bag costs seed quality",
                    "Today",
                    "The head is in the open",
                    ""));
    static final Rule SENSOR_SILENT = rule(
            "silent",
            "Sensor silent",
            RuleKind.SENSOR_SILENT,
            5,
            Priority.MEDIUM,
            new ActionCard(
                    "Check battery and plug of the sensor",
                    "Bags of this house are blind without it",
                    "Today",
                    "The sensor is heard again",
                    "Wet houses and mains do not mix: leave mains to qualified people."));

    static final List<Rule> RULES = List.of(DAMP, HOT, DUE, OVERDUE, SENSOR_SILENT);

    private SampleStation() {}

    private static Crop crop(String id, String name) {
        return new Crop(
                new CropId(id),
                name,
                HEAT,
                new Crop.BagTimes(
                        Duration.ofDays(7), Duration.ofDays(1), Duration.ofDays(2), Duration.ofDays(5), "invented"),
                new Crop.RipeningWindow(49, 56, "invented"));
    }

    private static Sensor sensor(
            String id, String name, HouseId house, Optional<BayId> bay, boolean spare, Set<Quantity> quantities) {
        return new Sensor(new SensorId(id), name, house, bay, spare, quantities, Duration.ofMinutes(1));
    }

    private static BagMaterial material(String id, String name, int days) {
        return new BagMaterial(
                new MaterialId(id),
                name,
                new Spread(0.4, 0.1),
                new Spread(0.5, 0.1),
                new Spread(0.01, 0.003),
                new Spread(10, 3),
                Duration.ofDays(days),
                "invented for tests");
    }

    private static Rule rule(String id, String name, RuleKind kind, double limit, Priority priority, ActionCard card) {
        return new Rule(
                new RuleId(id), name, kind, limit, 0, Duration.ofMinutes(10), Duration.ofMinutes(10), priority, card);
    }
}
