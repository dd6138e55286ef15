package bagward.board;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEngine;
import bagward.alarm.AlarmEvent;
import bagward.alarm.Rule;
import bagward.alarm.Step;
import bagward.alarm.SystemState;
import bagward.bag.Head;
import bagward.bag.Register;
import bagward.climate.SensorId;
import bagward.fault.ImpossibleValueException;
import bagward.station.HouseId;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Runs alarm rules over a stretch of the past: which alarms would have come, and when. Bags are swept one after the other,
 * each climate computed once, so that a season of many bags needs little memory; the alarms are those that the running
 * engine would have raised if it had looked at the same instants, each from the readings until then. What falls into the
 * minute of an instant is taken whole.
 *
 * <p>Not rehearsed: trouble of the system and of clocks. People are left out: nobody acknowledges, shelves or acts.
 *
 * <p>Heads may be swept by several threads.
 */
public final class Rehearsal {
    private static final Duration FINEST = Duration.ofMinutes(1);

    /** How often what lent sensors taught is taken anew, if nothing else is said. */
    private static final Duration LESSONS_EVERY = Duration.ofDays(1);

    private final BoardInputs season;
    private final Instant from;
    private final Duration every;
    private final PastKnowledge knowledge;
    private final List<AlarmEvent> sensorEvents = new ArrayList<>();
    private final NavigableMap<Instant, Set<SensorId>> silent = new TreeMap<>();
    private final Map<HouseId, HouseSweep> houses = new HashMap<>();

    /**
     * Sweeps the sensors; the heads follow with {@link #of}.
     *
     * @param season what is looked at, with the rules to try; its time is the end; what it knows is not looked at
     * @param from the first instant that is looked at
     * @param every how often, a minute or more
     * @throws ImpossibleValueException if there is nothing between from and the end, or the step is too fine
     */
    public Rehearsal(BoardInputs season, Instant from, Duration every) {
        this(season, from, every, LESSONS_EVERY);
    }

    /** The same with what lent sensors taught taken anew at other intervals. */
    Rehearsal(BoardInputs season, Instant from, Duration every, Duration lessonsEvery) {
        if (!from.isBefore(season.now())) {
            throw new ImpossibleValueException(
                    "a rehearsal from " + from + " to " + season.now() + " is empty: give an end after the start");
        }
        if (every.compareTo(FINEST) < 0) {
            throw new ImpossibleValueException("a rehearsal looks once a minute at most, not every " + every);
        }
        this.season = season;
        this.from = from;
        this.every = every;
        this.knowledge = new PastKnowledge(season, from, lessonsEvery);
        season.station().houses().forEach(house -> houses.put(house.id(), new HouseSweep(this, house.id())));
        sweepSensors();
    }

    /** Alarms about sensors. */
    public List<RehearsedAlarm> ofSensors() {
        return RehearsedAlarm.of(sensorEvents);
    }

    /** Alarms about the air of drying places. */
    public List<RehearsedAlarm> ofDryingPlaces() {
        return RehearsedAlarm.of(dryingEvents());
    }

    /** All changes of alarms about drying places, place by place, oldest first in each. */
    List<AlarmEvent> dryingEvents() {
        return season.station().drying().stream()
                .flatMap(house -> new DryingSweep(this, house).events().stream())
                .toList();
    }

    /** Alarms about one head. */
    public List<RehearsedAlarm> of(Head head) {
        return RehearsedAlarm.of(events(head));
    }

    /** Alarms of houses for many of their bags. */
    public List<RehearsedAlarm> ofHouses() {
        return RehearsedAlarm.of(houseEvents());
    }

    /** When a house calls for its bags. */
    HouseSweep calls(HouseId house) {
        return Optional.ofNullable(houses.get(house)).orElseGet(() -> new HouseSweep(this, house));
    }

    /** All changes of alarms about sensors, oldest first. */
    List<AlarmEvent> sensorEvents() {
        return List.copyOf(sensorEvents);
    }

    /** All changes of alarms of houses for many of their bags, those of one house oldest first. */
    List<AlarmEvent> houseEvents() {
        return season.station().houses().stream()
                .flatMap(house -> calls(house.id()).events().stream())
                .toList();
    }

    /** All changes of alarms about one head, oldest first. */
    List<AlarmEvent> events(Head head) {
        return new HeadSweep(this, head).events();
    }

    /** The heads that had a bag on in the time that is looked at. */
    public List<Head> heads() {
        return season.register().heads().stream()
                .filter(head -> head.baggings().stream()
                        .anyMatch(bagging -> bagging.putOn().isBefore(season.now())
                                && bagging.takenOff().map(from::isBefore).orElse(true)))
                .toList();
    }

    /** The first instant at or after another that is looked at. */
    Instant tickFrom(Instant instant) {
        if (!instant.isAfter(from)) {
            return from;
        }
        long millis = every.toMillis();
        long past = Duration.between(from, instant).toMillis();
        return from.plusMillis(Math.floorDiv(past + millis - 1, millis) * millis);
    }

    /** The last instant that is looked at before a change; or the one after it if the other was looked at already. */
    Instant tickBefore(Instant change, Instant looked) {
        Instant at = tickFrom(change);
        Instant before = at.minus(every);
        return before.isAfter(looked) ? before : at;
    }

    Instant begin() {
        return from;
    }

    Instant end() {
        return season.now();
    }

    /** The next instant that is looked at. */
    Instant tickAfter(Instant tick) {
        return tick.plus(every);
    }

    Register register() {
        return season.register();
    }

    /** Name of a house. */
    String nameOf(HouseId house) {
        return TogetherCalls.nameOf(season.station(), house);
    }

    List<Rule> rules() {
        return season.rules();
    }

    ZoneId zone() {
        return season.station().zone();
    }

    PastKnowledge knowledge() {
        return knowledge;
    }

    /** What a board of an instant would have been a function of. */
    BoardInputs at(Instant now, Knowledge known) {
        return new BoardInputs(
                now,
                season.station(),
                season.register(),
                season.materials(),
                season.readings(),
                season.rules(),
                season.organisms(),
                season.crops(),
                known,
                SystemState.WELL);
    }

    Suppression suppressionAt(Instant tick) {
        Map.Entry<Instant, Set<SensorId>> newest = silent.floorEntry(tick);
        return new Suppression(newest == null ? Set.of() : newest.getValue());
    }

    /** The first instant after another at which other sensors are silent; {@link Instant#MAX} if there is none. */
    Instant silenceAfter(Instant tick) {
        Instant next = silent.higherKey(tick);
        return next == null ? Instant.MAX : next;
    }

    static Instant earliest(Instant... instants) {
        Instant earliest = Instant.MAX;
        for (Instant instant : instants) {
            earliest = instant.isBefore(earliest) ? instant : earliest;
        }
        return earliest;
    }

    private void sweepSensors() {
        AlarmBook book = AlarmBook.EMPTY;
        Set<SensorId> before = Set.of();
        for (Instant tick = from; !tick.isAfter(end()); tick = tick.plus(every)) {
            SensorAssessor sensors = new SensorAssessor(at(tick, Knowledge.NONE), book, Map.of());
            if (!sensors.silent().keySet().equals(before)) {
                before = Set.copyOf(sensors.silent().keySet());
                silent.put(tick, before);
            }
            Step step = AlarmEngine.step(book, tick, sensors.verdicts(), season.rules());
            sensorEvents.addAll(step.events());
            book = step.book();
        }
    }
}
