package bagward.board;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEngine;
import bagward.alarm.AlarmEvent;
import bagward.alarm.Step;
import bagward.alarm.SystemState;
import bagward.alarm.Verdict;
import bagward.bag.Head;
import bagward.climate.SensorId;
import bagward.fault.ImpossibleValueException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Runs alarm rules over a stretch of the past: which alarms would have come, and when. Bags are swept one after the other,
 * each climate computed once, so that a season of many bags needs little memory; the alarms are those that the running
 * engine would have raised if it had looked at the same instants.
 *
 * <p>Not rehearsed: what rests on the outlook of a night, how a bag with a sensor in it sits, and trouble of the system. People are left out: nobody
 * acknowledges, shelves or acts.
 *
 * <p>Immutable after construction; heads may be swept by several threads.
 */
public final class Rehearsal {
    private static final Duration FINEST = Duration.ofMinutes(1);

    private final BoardInputs season;
    private final Instant from;
    private final Duration every;
    private final List<AlarmEvent> sensorEvents = new ArrayList<>();
    private final Map<Instant, Map<SensorId, Verdict>> silent = new HashMap<>();

    /**
     * Sweeps the sensors; the heads follow with {@link #of}.
     *
     * @param season what is looked at, with the rules to try; its time is the end
     * @param from the first instant that is looked at
     * @param every how often, a minute or more
     * @throws ImpossibleValueException if there is nothing between from and the end, or the step is too fine
     */
    public Rehearsal(BoardInputs season, Instant from, Duration every) {
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
        sweepSensors();
    }

    /** Alarms about sensors. */
    public List<RehearsedAlarm> ofSensors() {
        return RehearsedAlarm.of(sensorEvents);
    }

    /** Alarms about one head. */
    public List<RehearsedAlarm> of(Head head) {
        return RehearsedAlarm.of(events(head));
    }

    /** All changes of alarms about sensors, oldest first. */
    List<AlarmEvent> sensorEvents() {
        return List.copyOf(sensorEvents);
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

    Instant after(Instant tick) {
        return tick.plus(every);
    }

    Instant end() {
        return season.now();
    }

    /** What a board of an instant would have been a function of. */
    BoardInputs at(Instant now) {
        return new BoardInputs(
                now,
                season.station(),
                season.register(),
                season.materials(),
                season.readings(),
                season.rules(),
                season.organisms(),
                season.crops(),
                season.knowledge(),
                SystemState.WELL);
    }

    Suppression suppressionAt(Instant tick) {
        return new Suppression(silent.getOrDefault(tick, Map.of()));
    }

    private void sweepSensors() {
        AlarmBook book = AlarmBook.EMPTY;
        for (Instant tick = from; !tick.isAfter(end()); tick = after(tick)) {
            SensorAssessor sensors = new SensorAssessor(at(tick), book, Map.of());
            if (!sensors.silent().isEmpty()) {
                silent.put(tick, Map.copyOf(sensors.silent()));
            }
            Step step = AlarmEngine.step(book, tick, sensors.verdicts(), season.rules());
            sensorEvents.addAll(step.events());
            book = step.book();
        }
    }
}
