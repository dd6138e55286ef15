package bagward.site;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmKey;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Rule;
import bagward.alarm.Subject;
import bagward.bag.Bagging;
import bagward.bag.Head;
import bagward.bag.Origin;
import bagward.bag.Register;
import bagward.bag.SensorLoan;
import bagward.bag.TagCode;
import bagward.board.AlarmView;
import bagward.board.BagInsight;
import bagward.board.BagView;
import bagward.board.Board;
import bagward.board.DryingView;
import bagward.board.HouseView;
import bagward.board.Measure;
import bagward.board.SensorView;
import bagward.climate.SensorId;
import bagward.mould.RiskAssessment;
import bagward.mould.RiskBand;
import bagward.station.House;
import bagward.station.Sensor;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A board of the invented station: mostly calm, one bag of each trouble. */
final class SampleBoard {
    private final Register register;
    private final Instant now;
    private final Set<AlarmKey> seen;

    private SampleBoard(Register register, Instant now, Set<AlarmKey> seen) {
        this.register = register;
        this.now = now;
        this.seen = new HashSet<>(seen);
    }

    static Board of(Register register, Instant now, Set<AlarmKey> seen) {
        return new SampleBoard(register, now, seen).board();
    }

    /** The same board with one more alarm, for a bag that is well so far. */
    static Board withAlarm(Board board, TagCode tag, Rule rule, String message) {
        List<AlarmView> alarms = new ArrayList<>(board.alarms());
        Head head = board.find(tag).orElseThrow().head();
        alarms.add(0, view(rule, new Subject.Bag(tag), board.at(), message, false, Optional.of(head)));
        return new Board(
                board.at(),
                board.station(),
                board.zone(),
                board.houses(),
                board.bags(),
                board.sensors(),
                alarms,
                List.of(),
                board.drying(),
                board.newestReading());
    }

    private Board board() {
        List<BagView> bags = register.baggedAt(now).stream()
                .sorted(Comparator.comparing(Head::spot))
                .map(this::bag)
                .toList();
        return new Board(
                now,
                SampleStation.STATION.name(),
                SampleStation.ZONE,
                SampleStation.STATION.growing().stream().map(this::house).toList(),
                bags,
                SampleStation.STATION.sensors().stream().map(this::sensor).toList(),
                alarms(),
                List.of(),
                SampleStation.STATION.drying().stream().map(this::drying).toList(),
                Optional.of(now.minusSeconds(20)));
    }

    /** A drying place without a sensor. */
    private DryingView drying(House house) {
        return new DryingView(
                house, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), 0, List.of());
    }

    private List<AlarmView> alarms() {
        List<AlarmView> alarms = new ArrayList<>();
        addBag(alarms, SampleStation.DAMP, SampleRegister.DAMP, "damp 7 h 30 min: 96 %RH now, limit 90 %RH, estimated");
        addBag(alarms, SampleStation.OVERDUE, SampleRegister.OVERDUE, "2 days late: on since 9 days, due after 7");
        addBag(alarms, SampleStation.HOT, SampleRegister.HOT, "31.4 °C for 25 min, limit 30 °C, estimated");
        Subject silent = new Subject.OfSensor(SampleStation.SILENT);
        alarms.add(view(
                SampleStation.SENSOR_SILENT,
                silent,
                now,
                "not heard for 4 h, expected every 60 s",
                seen(SampleStation.SENSOR_SILENT, silent),
                Optional.empty()));
        addBag(alarms, SampleStation.DUE, SampleRegister.DUE, "on since 7 days, due today");
        return alarms;
    }

    private void addBag(List<AlarmView> alarms, Rule rule, TagCode tag, String message) {
        Optional<Head> head = register.find(tag).filter(h -> h.baggingAt(now).isPresent());
        head.ifPresent(h -> {
            Subject subject = new Subject.Bag(tag);
            alarms.add(view(rule, subject, now, message, seen(rule, subject), head));
        });
    }

    private boolean seen(Rule rule, Subject subject) {
        return seen.contains(new AlarmKey(rule.id(), subject));
    }

    private static AlarmView view(
            Rule rule, Subject subject, Instant now, String message, boolean seen, Optional<Head> head) {
        Instant since = now.minus(Duration.ofMinutes(90));
        Alarm alarm = new Alarm(
                new AlarmKey(rule.id(), subject),
                seen ? AlarmPhase.ACKNOWLEDGED : AlarmPhase.UNACKNOWLEDGED,
                since,
                Optional.of(since.plus(rule.onDelay())),
                seen ? Optional.of(now) : Optional.empty(),
                seen ? Optional.of("Ada") : Optional.empty(),
                Optional.empty(),
                message);
        return new AlarmView(alarm, rule, head.map(Head::spot));
    }

    private BagView bag(Head head) {
        TagCode tag = head.tag();
        Bagging bagging = head.baggingAt(now).orElseThrow();
        boolean damp = tag.equals(SampleRegister.DAMP);
        boolean hot = tag.equals(SampleRegister.HOT);
        boolean unknown = tag.equals(SampleRegister.UNKNOWN);
        Optional<SensorId> lent = lentTo(tag);
        Origin origin = lent.isPresent() ? Origin.MEASURED : Origin.ESTIMATED;
        double temperature = SampleClimate.temperature(now) + (hot ? 9 : 1);
        double humidity = damp ? 96 : Math.min(88, SampleClimate.humidity(now) + 4);
        RiskBand band = tag.equals(SampleRegister.RISKY) ? RiskBand.HIGH : damp ? RiskBand.HIGH : RiskBand.LOW;
        RiskAssessment risk =
                new RiskAssessment(band, "grey mould", "wet 6.2 h at 14 °C, needed 8 h", 6.2, unknown ? 5 : 0.2);
        return new BagView(
                head,
                bagging.material(),
                bagging.putOn(),
                bagging.putOn().plus(Duration.ofDays(7)),
                lent,
                unknown ? Optional.empty() : Optional.of(measure(temperature, 1.5, origin)),
                unknown ? Optional.empty() : Optional.of(measure(humidity, 4, origin)),
                damp,
                risk,
                damp ? Duration.ofMinutes(450) : Duration.ZERO,
                BagInsight.NONE,
                Optional.empty(),
                alarms().stream()
                        .filter(a -> a.alarm().key().subject().equals(new Subject.Bag(tag)))
                        .map(a -> a.rule().priority())
                        .findFirst());
    }

    private Optional<SensorId> lentTo(TagCode tag) {
        return register.loans().stream()
                .filter(l -> l.tag().equals(tag) && l.to().isEmpty())
                .map(SensorLoan::sensor)
                .findFirst();
    }

    private Measure measure(double value, double half, Origin origin) {
        double width = origin == Origin.MEASURED ? half * 0.3 : half;
        return new Measure(value, value - width, value + width, origin, now.minusSeconds(20));
    }

    private HouseView house(House house) {
        boolean silent = house.id().equals(SampleStation.BIRCH);
        return new HouseView(
                house,
                silent ? Optional.empty() : Optional.of(measure(SampleClimate.temperature(now), 1, Origin.MEASURED)),
                silent ? Optional.empty() : Optional.of(measure(SampleClimate.humidity(now), 6, Origin.MEASURED)),
                Optional.of(measure(700 * SampleClimate.sun(now), 20, Origin.MEASURED)),
                Optional.of(now.minusSeconds(20)),
                SampleClimate.day(now, SampleClimate::temperature, silent),
                SampleClimate.day(now, SampleClimate::humidity, silent));
    }

    private SensorView sensor(Sensor sensor) {
        boolean silent = sensor.id().equals(SampleStation.SILENT);
        boolean unheard = sensor.id().equals(SampleStation.SPARE);
        Map<Quantity, Measure> newest = new EnumMap<>(Quantity.class);
        for (Quantity quantity : sensor.quantities()) {
            if (!unheard) {
                newest.put(quantity, measure(value(quantity), 0.5, Origin.MEASURED));
            }
        }
        Optional<TagCode> lent = register.loans().stream()
                .filter(l -> l.sensor().equals(sensor.id()) && l.to().isEmpty())
                .map(SensorLoan::tag)
                .findFirst();
        Optional<Instant> heard = unheard
                ? Optional.empty()
                : Optional.of(now.minus(silent ? Duration.ofHours(4) : Duration.ofSeconds(20)));
        return new SensorView(sensor, newest, heard, silent, Optional.empty(), lent);
    }

    private double value(Quantity quantity) {
        return switch (quantity) {
            case TEMPERATURE -> SampleClimate.temperature(now);
            case HUMIDITY -> SampleClimate.humidity(now);
            case LIGHT -> 700 * SampleClimate.sun(now);
            case BATTERY -> 81;
        };
    }
}
