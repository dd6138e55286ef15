package bagward.message;

import bagward.alarm.ActionCard;
import bagward.alarm.Alarm;
import bagward.alarm.AlarmKey;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Priority;
import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.alarm.RuleKind;
import bagward.alarm.Subject;
import bagward.bag.FlowerSigns;
import bagward.bag.Head;
import bagward.bag.Line;
import bagward.bag.MaterialId;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.TagCode;
import bagward.board.AlarmView;
import bagward.board.BagInsight;
import bagward.board.BagView;
import bagward.board.Board;
import bagward.board.HouseView;
import bagward.climate.Site;
import bagward.mould.HeatLimits;
import bagward.mould.RiskAssessment;
import bagward.mould.RiskBand;
import bagward.pollen.HouseSeason;
import bagward.pollen.PollenReport;
import bagward.pollen.Predictor;
import bagward.pollen.Relation;
import bagward.station.Bay;
import bagward.station.BayId;
import bagward.station.House;
import bagward.station.HouseId;
import bagward.station.Spot;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Boards made by hand for the composer: two houses with two bays each. */
public final class Stage {
    static final ZoneId ZONE = ZoneId.of("Europe/Copenhagen");
    public static final Rule HIGH = rule("bag-wet", "Bag does not dry", Priority.HIGH, RuleKind.BAG_DAMP);
    static final Rule MEDIUM = rule("bag-hot", "Bag hot", Priority.MEDIUM, RuleKind.BAG_HOT);
    static final Rule LOW = rule("bag-damp", "Bag damp for long", Priority.LOW, RuleKind.BAG_DAMP);
    static final Rule DUE = rule("bag-due", "Bag due", Priority.LOW, RuleKind.BAG_DUE);

    static final Map<HouseId, PollenReport> NO_POLLEN = Map.of();

    private static final HeatLimits BEARS = new HeatLimits(27, 30, Duration.ofHours(3), 33, "invented");
    private static final int SPOTS_A_BAY = 125;

    private Stage() {}

    private static Rule rule(String id, String name, Priority priority, RuleKind kind) {
        return new Rule(
                new RuleId(id),
                name,
                kind,
                90,
                2,
                Duration.ZERO,
                Duration.ZERO,
                priority,
                new ActionCard("Swap the bag", "wet buds rot", "Now", "the film is dry", "Mouldy bags are not shaken"));
    }

    static Person person(String name, Person.Turn turn, Optional<String> quiet) {
        return new Person(
                name,
                List.of(new ChannelName("mail")),
                turn,
                Priority.MEDIUM,
                quiet.map(hours -> QuietHours.parse(hours, Priority.HIGH)),
                false);
    }

    static Person reader(String name) {
        return new Person(
                name, List.of(new ChannelName("mail")), Person.Turn.FIRST, Priority.MEDIUM, Optional.empty(), true);
    }

    static MessagePlan plan(Person... people) {
        return new MessagePlan(
                List.of(people), LocalTime.of(6, 30), LocalTime.of(17, 30), Duration.ofHours(2), Duration.ofHours(1));
    }

    /** The report of a house in which no score was taken and no light was measured yet. */
    static Map<HouseId, PollenReport> darkSoFar(Instant now, String house) {
        HouseId id = new HouseId(house);
        HouseSeason season =
                HouseSeason.of(id, ZONE, List.of(), now.atZone(ZONE).toLocalDate(), BEARS);
        return Map.of(
                id,
                PollenReport.of(
                        now,
                        new Site(55.6, 12.1, 20),
                        season,
                        List.of(),
                        Optional.empty(),
                        Predictor.LIGHT_TO_SCORE,
                        (rows, predictor) -> new Relation.NotYet(predictor, 0, "15 more scored days")));
    }

    static Spot spot(int number) {
        int bay = number / SPOTS_A_BAY;
        return new Spot(
                new HouseId(bay < 2 ? "alder" : "birch"),
                new BayId(bay % 2 == 0 ? "long" : "door"),
                number % SPOTS_A_BAY + 1);
    }

    static AlarmView alarm(Rule rule, int number, AlarmPhase phase, Instant raisedAt, Instant now) {
        Alarm alarm = new Alarm(
                new AlarmKey(rule.id(), new Subject.Bag(tag(number))),
                phase,
                raisedAt.minusSeconds(60),
                Optional.of(raisedAt),
                Optional.empty(),
                Optional.empty(),
                phase == AlarmPhase.RETURNED_UNACKNOWLEDGED ? Optional.of(now) : Optional.empty(),
                "damp 20.1 h: 96 %RH now, limit 90 %RH, estimated");
        return new AlarmView(alarm, rule, Optional.of(spot(number)));
    }

    /** A house that calls for so many of its bags. */
    public static AlarmView ofHouse(Rule rule, String house, int bags, Instant now) {
        Alarm alarm = new Alarm(
                new AlarmKey(rule.id(), new Subject.InHouse(new HouseId(house))),
                AlarmPhase.UNACKNOWLEDGED,
                now.minusSeconds(60),
                Optional.of(now),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                bags + " of 20 bags damp, the longest 20 h: up to 96 %RH now, limit 90 %RH, estimated");
        return new AlarmView(
                alarm,
                rule,
                Optional.empty(),
                IntStream.range(0, bags).mapToObj(Stage::tag).toList());
    }

    static TagCode tag(int number) {
        return new TagCode("H-" + number);
    }

    static BagView bag(int number, Instant putOn, Instant due, boolean wet, RiskBand band) {
        Line line = new Line("Rook 3");
        Head head = new Head(
                tag(number),
                spot(number),
                line,
                line,
                Optional.empty(),
                new Pollination(putOn, "Ada", PollinationKind.SELF, 8, Optional.empty()),
                List.of(),
                FlowerSigns.NOT_NOTED,
                Optional.empty());
        return new BagView(
                head,
                new MaterialId("film"),
                putOn,
                due,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                wet,
                new RiskAssessment(band, "grey mould", "wet 9.2 h at 14 °C, needed 10.5 h", 9.2, 0),
                wet ? Duration.ofMinutes(200) : Duration.ZERO,
                BagInsight.NONE,
                Optional.empty(),
                Optional.empty());
    }

    public static Board board(Instant at, List<AlarmView> alarms) {
        return board(at, List.of(), alarms);
    }

    static Board board(Instant at, List<BagView> bags, List<AlarmView> alarms) {
        return new Board(
                at,
                "Lyngbakke",
                ZONE,
                List.of(house("alder", "Alder house"), house("birch", "Birch house")),
                bags,
                List.of(),
                alarms,
                Optional.of(at));
    }

    private static HouseView house(String id, String name) {
        House house = new House(
                new HouseId(id),
                name,
                List.of(
                        new Bay(new BayId("long"), "Long bench", SPOTS_A_BAY, 5),
                        new Bay(new BayId("door"), "Door bench", SPOTS_A_BAY, 5)));
        return new HouseView(
                house, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of(), List.of());
    }
}
