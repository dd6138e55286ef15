package bagward.board;

import bagward.alarm.ActionCard;
import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEngine;
import bagward.alarm.Priority;
import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.alarm.RuleKind;
import bagward.bag.BagMaterial;
import bagward.bag.CropId;
import bagward.bag.Line;
import bagward.bag.MaterialId;
import bagward.bag.Outlook;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.Register;
import bagward.bag.RegisterChange;
import bagward.bag.RegisterRules;
import bagward.bag.Spread;
import bagward.bag.TagCode;
import bagward.climate.Reading;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.climate.WetnessRule;
import bagward.mould.BandLimits;
import bagward.mould.Crop;
import bagward.mould.Crops;
import bagward.mould.DryBreak;
import bagward.mould.HeatLimits;
import bagward.mould.NightRule;
import bagward.mould.Organism;
import bagward.mould.Seeds;
import bagward.mould.WetnessInfection;
import bagward.station.Bay;
import bagward.station.BayId;
import bagward.station.House;
import bagward.station.HouseId;
import bagward.station.Sensor;
import bagward.station.Spot;
import bagward.station.Station;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A small invented station whose walking order is not that of its names, with bags and readings as a test asks. */
public final class Scenario {
    /** When the scenario's houses begin to be heard. */
    public static final Instant START = Instant.parse("2026-02-01T00:00:00Z");

    static final HouseId SOUTH = new HouseId("south");
    static final HouseId NORTH = new HouseId("north");
    static final BayId WINDOW = new BayId("window");
    static final BayId AISLE = new BayId("aisle");
    static final MaterialId FILM = new MaterialId("film");
    static final Sensor SOUTH_POST = sensor("south-post", SOUTH, false);
    static final Sensor NORTH_POST = sensor("north-post", NORTH, false);
    static final HouseId SEEDS = new HouseId("seeds");
    static final Sensor SEED_POST = sensor("seed-post", SEEDS, false);
    static final Sensor SPARE = sensor("spare-1", SOUTH, true);

    static final Rule DAMP =
            rule("damp", RuleKind.BAG_DAMP, 90, 2, Duration.ofHours(6), Duration.ofHours(1), Priority.LOW);
    static final Rule HOT =
            rule("hot", RuleKind.BAG_HOT, 30, 1, Duration.ofHours(1), Duration.ofHours(1), Priority.MEDIUM);
    static final Rule DUE = rule("due", RuleKind.BAG_DUE, 0, 0, Duration.ZERO, Duration.ZERO, Priority.LOW);
    static final Rule SILENT =
            rule("silent", RuleKind.SENSOR_SILENT, 3, 0, Duration.ZERO, Duration.ofMinutes(5), Priority.HIGH);

    static final Rule BATTERY =
            rule("battery", RuleKind.SENSOR_BATTERY, 15, 5, Duration.ZERO, Duration.ZERO, Priority.LOW);

    /** Calls 12 h before a high mould risk. */
    public static final Rule MOULD =
            rule("mould", RuleKind.BAG_MOULD, 12, 0, Duration.ZERO, Duration.ofHours(2), Priority.MEDIUM);

    static final Rule SHUT =
            rule("shut", RuleKind.BAG_SHUT, 0.1, 0, Duration.ZERO, Duration.ofHours(1), Priority.MEDIUM);
    static final Rule OFF = rule("off", RuleKind.BAG_OFF, 0.1, 0, Duration.ZERO, Duration.ofHours(1), Priority.MEDIUM);

    /** Calls once the air of a drying place has been damp for half a day. */
    static final Rule DRYING =
            rule("drying", RuleKind.DRYING_DAMP, 70, 3, Duration.ofHours(12), Duration.ofHours(1), Priority.MEDIUM);

    private static final BagMaterial MATERIAL = new BagMaterial(
            FILM,
            "Perforated film",
            new Spread(0.5, 0.1),
            new Spread(0.5, 0.1),
            new Spread(0.015, 0.004),
            new Spread(8, 3),
            Duration.ofDays(7),
            "test material");
    private static final Organism BOTRYTIS = new Organism(
            "botrytis",
            "Botrytis",
            new WetnessInfection(1, 25, 34, 1, 12, DryBreak.endingFrom(4)),
            BandLimits.OF_NEED,
            "test row");

    private static final Crop CROP = new Crop(
            new CropId("oleracea"),
            "Brassica oleracea",
            new HeatLimits(27, 30, Duration.ofHours(3), 33, "test row"),
            new Crop.BagTimes(
                    Duration.ofDays(7), Duration.ofDays(1), Duration.ofDays(2), Duration.ofDays(5), "test row"),
            new Crop.RipeningWindow(49, 56, "test row"));

    /** A crop that bears less, and is in the bag for a shorter time. */
    static final Crop TENDER = new Crop(
            new CropId("tender"),
            "A tender crop",
            new HeatLimits(20, 22, Duration.ofHours(3), 25, "test row"),
            new Crop.BagTimes(
                    Duration.ofDays(5), Duration.ofDays(1), Duration.ofDays(2), Duration.ofDays(4), "test row"),
            new Crop.RipeningWindow(30, 40, "test row"));

    private final List<Reading> readings = new ArrayList<>();
    private final List<RegisterChange> changes = new ArrayList<>();
    private List<Rule> rules = List.of(DAMP, HOT, DUE, SILENT, BATTERY);
    private final int spots;
    private boolean seedRoom;

    /** With so many spots on each bay. */
    public Scenario(int spots) {
        this.spots = spots;
    }

    private static Sensor sensor(String id, HouseId house, boolean spare) {
        return new Sensor(
                new SensorId(id),
                id,
                house,
                Optional.empty(),
                spare,
                EnumSet.allOf(Quantity.class),
                Duration.ofMinutes(5));
    }

    private static Rule rule(
            String id, RuleKind kind, double limit, double deadband, Duration on, Duration off, Priority priority) {
        ActionCard card = new ActionCard("Look", "it may be wrong", "today", "it is right", "");
        return new Rule(new RuleId(id), id, kind, limit, deadband, on, off, priority, card);
    }

    /** Adds a place in which seed dries, with a sensor. */
    public Scenario withSeedRoom() {
        seedRoom = true;
        return this;
    }

    Station station() {
        House south = new House(
                SOUTH, "South", List.of(new Bay(WINDOW, "Window", spots, 2), new Bay(AISLE, "Aisle", spots, 2)));
        House north = new House(NORTH, "North", List.of(new Bay(AISLE, "Aisle", spots, 2)));
        return new Station(
                "Vindhede",
                55.6,
                12.1,
                20,
                ZoneId.of("Europe/Copenhagen"),
                seedRoom ? List.of(south, north, House.drying(SEEDS, "Seed room")) : List.of(south, north),
                seedRoom ? List.of(SOUTH_POST, NORTH_POST, SPARE, SEED_POST) : List.of(SOUTH_POST, NORTH_POST, SPARE));
    }

    static Instant hours(double hours) {
        return START.plusSeconds(Math.round(hours * 3600));
    }

    /** A sensor is heard every five minutes in [from, to) hours, with one temperature and humidity and no light. */
    public Scenario heard(Sensor sensor, double from, double to, double celsius, double percent) {
        for (Instant at = hours(from); at.isBefore(hours(to)); at = at.plusSeconds(300)) {
            readings.add(Reading.of(new SeriesId(sensor.id(), Quantity.TEMPERATURE), at, celsius));
            readings.add(Reading.of(new SeriesId(sensor.id(), Quantity.HUMIDITY), at, percent));
            readings.add(Reading.of(new SeriesId(sensor.id(), Quantity.LIGHT), at, 0));
        }
        return this;
    }

    /** A sensor says what is left in its battery. */
    Scenario battery(Sensor sensor, double hour, double percent) {
        readings.add(Reading.of(new SeriesId(sensor.id(), Quantity.BATTERY), hours(hour), percent));
        return this;
    }

    /** A bag is put on. */
    public Scenario bag(String tag, HouseId house, BayId bay, int spot, double hour) {
        return bag(tag, house, bay, spot, hour, Optional.empty());
    }

    /** A bag is put on a head whose crop may be named. */
    Scenario bag(String tag, HouseId house, BayId bay, int spot, double hour, Optional<CropId> crop) {
        Pollination pollination = new Pollination(hours(hour), "Mirja", PollinationKind.CROSS, 8, Optional.empty());
        changes.add(new RegisterChange.PutOn(
                new TagCode(tag),
                hours(hour),
                new Spot(house, bay, spot),
                FILM,
                new Line("Hvidå 12"),
                new Line("Sortmose 3"),
                pollination,
                crop));
        return this;
    }

    /**
     * Two bags in a house of 70 %RH without light, one of which holds a sensor from hour 12 on that reads 94 %RH: it is
     * four fifths shut.
     */
    public static Scenario lent() {
        return new Scenario(20)
                .heard(SOUTH_POST, 0, 72, 14, 70)
                .heard(SPARE, 12, 60, 14, 94)
                .bag("S-1", SOUTH, WINDOW, 1, 6)
                .bag("S-2", SOUTH, WINDOW, 2, 6)
                .change(new RegisterChange.Lend(new TagCode("S-1"), hours(12), SPARE.id()));
    }

    /** The same sensor taken out at hour 60. */
    public static Scenario lentAndGivenBack() {
        return lent().change(new RegisterChange.GiveBack(new TagCode("S-1"), hours(60), SPARE.id()));
    }

    /** A bag in a house of 93 %RH for five days. */
    public static Scenario dampWeek() {
        return new Scenario(20).heard(SOUTH_POST, 0, 24 * 5, 14, 93).bag("S-1", SOUTH, WINDOW, 1, 6);
    }

    /** Readings of the spare sensor between those of {@link #lent}, higher than they are. */
    public static List<Reading> lentLate() {
        return new Scenario(20).heard(SPARE, 30.05, 40, 14, 99).readings();
    }

    /** Name of the spare sensor. */
    public static SensorId spare() {
        return SPARE.id();
    }

    /** The readings up to an hour. */
    public List<Reading> upTo(double hour) {
        return readings.stream()
                .filter(reading -> !reading.measuredAt().isAfter(hours(hour)))
                .toList();
    }

    /** A head that was harvested two days before hangs in the seed room from an hour on. */
    Scenario hangs(String tag, double hour) {
        bag(tag, SOUTH, WINDOW, 1, hour - 1440);
        change(new RegisterChange.TakeOff(new TagCode(tag), hours(hour - 1272)));
        change(new RegisterChange.Harvest(new TagCode(tag), hours(hour - 48), ""));
        return change(new RegisterChange.HangToDry(new TagCode(tag), hours(hour), Optional.of(SEEDS)));
    }

    Scenario change(RegisterChange change) {
        changes.add(change);
        return this;
    }

    /** Watches these rules instead. */
    Scenario watch(Rule... other) {
        rules = List.of(other);
        return this;
    }

    List<Reading> readings() {
        return readings;
    }

    /** The inputs with the readings as they stand. */
    public BoardInputs at(double hour) {
        return at(hour, readings, Map.of(FILM, MATERIAL));
    }

    BoardInputs at(double hour, List<Reading> inThisOrder, Map<MaterialId, BagMaterial> materials) {
        Register register = new RegisterRules(station(), Set.of(FILM), Set.of(CROP.id(), TENDER.id()))
                .apply(Register.EMPTY, changes);
        return new BoardInputs(
                hours(hour),
                station(),
                register,
                materials,
                new HeldReadings().take(inThisOrder),
                rules,
                List.of(BOTRYTIS),
                new Crops(CROP, List.of(CROP, TENDER), Seeds.storage()));
    }

    static BagMaterial material() {
        return MATERIAL;
    }

    static Map<MaterialId, BagMaterial> materials() {
        return Map.of(FILM, MATERIAL);
    }

    /** The inputs with all that their readings teach. */
    public static BoardInputs knowing(BoardInputs in) {
        List<LoanStudy> studies = Lessons.lent(in.register(), in.now()).stream()
                .flatMap(lent ->
                        LoanStudy.of(in.station(), lent, in.register().loans(), material(), in.readings(), in.now())
                                .stream())
                .toList();
        Map<HouseId, Outlook> outlooks = new HashMap<>();
        Map<HouseId, NightRule.Verdict> weeks = new HashMap<>();
        in.station()
                .houses()
                .forEach(house -> weeks.put(
                        house.id(),
                        Lessons.week(
                                in.station(), house.id(), in.readings(), WetnessRule.HumidityLimit.USUAL, in.now())));
        in.station()
                .houses()
                .forEach(house ->
                        outlooks.put(house.id(), Lessons.outlook(in.station(), house.id(), in.readings(), in.now())));
        return new BoardInputs(
                in.now(),
                in.station(),
                in.register(),
                in.materials(),
                in.readings(),
                in.rules(),
                in.organisms(),
                in.crops(),
                Lessons.known(studies, in.materials(), outlooks, weeks, in.now()),
                in.system());
    }

    /** One tick: assess, step, board. */
    public static Board tick(BoardInputs in, AlarmBook before) {
        Assessment assessment = BoardBuilder.assess(in, before);
        return BoardBuilder.board(in, assessment, step(in, before));
    }

    static AlarmBook step(BoardInputs in, AlarmBook before) {
        return AlarmEngine.step(
                        before, in.now(), BoardBuilder.assess(in, before).verdicts(), in.rules())
                .book();
    }
}
