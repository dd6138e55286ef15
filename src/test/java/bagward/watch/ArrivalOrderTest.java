package bagward.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmKey;
import bagward.alarm.Rule;
import bagward.alarm.Subject;
import bagward.bag.Register;
import bagward.bag.RegisterChange;
import bagward.bag.RegisterRules;
import bagward.bag.TagCode;
import bagward.board.BagView;
import bagward.board.BoardInputs;
import bagward.board.Rehearsal;
import bagward.board.RehearsedAlarm;
import bagward.board.Scenario;
import bagward.climate.Reading;
import bagward.climate.SeriesId;
import bagward.mould.HeadCare;
import bagward.mould.MouldReport;
import bagward.mould.RiskAssessment;
import bagward.store.SqliteStores;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * One and the same week through the real store and the running watch, heard and entered in several orders. The clock goes
 * on by three hours a step, at each of which the watch looks.
 */
class ArrivalOrderTest extends WatchStage {
    private static final int STEP = 3;
    private static final int BEFORE = 117;
    private static final int END = 144;
    private static final TagCode OTHER = new TagCode("R26-0148");

    /** What was done, by the hour. */
    private static final Map<Double, RegisterChange> DONE = Map.of(
            5.0,
            putOn(5),
            20.0,
            putOn(OTHER, 4, 20),
            66.0,
            new RegisterChange.Swap(TAG, hour(66), Stations.material()),
            130.0,
            new RegisterChange.TakeOff(OTHER, hour(130)));

    @Test
    void readings_shuffled_within_the_look_and_some_twice_give_the_same_alarm_journal() {
        long seed = 11;
        Told inTime = run("in-time", week(seed), (hour, seen) -> hour);
        List<Reading> mixed = new ArrayList<>(week(seed));
        mixed.addAll(week(seed).subList(300, 900));
        Collections.shuffle(mixed, new Random(seed));

        Told shuffled = run("shuffled", mixed, (hour, seen) -> hour);

        assertTrue(inTime.journal.size() > 5, "alarms to compare: " + inTime.journal);
        assertEquals(inTime, shuffled);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12})
    void a_day_heard_late_and_bags_entered_late_give_the_same_spells_risk_and_alarms_as_if_in_time(long seed) {
        Told inTime = run("in-time", week(seed), (hour, seen) -> hour);

        Told late = run(
                "late",
                week(seed),
                (hour, heard) -> heard ? hour > 48 && hour <= 72 ? BEFORE + STEP : hour : Math.min(END, hour + 30));

        assertNotEquals(inTime.before, late.before, "the day that is missing must matter");
        assertTrue(inTime.bags.stream().noneMatch(bag -> bag.tonight().isEmpty()), "there is an outlook of tonight");
        assertEquals(inTime.bags, late.bags);
        assertEquals(inTime.mould, late.mould);
        assertTrue(inTime.mould.spells().size() > 2, inTime.mould.spells()::toString);
        assertEquals(inTime.other, late.other);
        assertEquals(inTime.standing, late.standing);
        assertTrue(inTime.rehearsed.size() > 2, inTime.rehearsed::toString);
        assertEquals(inTime.rehearsed, late.rehearsed);
    }

    /** A house whose air changes every few hours, without a gap that would call for its sensor. */
    private static List<Reading> week(long seed) {
        Random random = new Random(seed);
        List<Reading> readings = new ArrayList<>();
        double hour = 0;
        while (hour < END) {
            double until = Math.min(END, hour + 1 + 9 * random.nextDouble());
            double celsius = 10 + 9 * random.nextDouble();
            double percent = 70 + 29 * random.nextDouble();
            for (Instant at = hour(hour); at.isBefore(hour(until)); at = at.plusSeconds(300)) {
                readings.add(Reading.of(new SeriesId(Stations.post().id(), Quantity.TEMPERATURE), at, celsius));
                readings.add(Reading.of(new SeriesId(Stations.post().id(), Quantity.HUMIDITY), at, percent));
            }
            hour = until;
        }
        return readings;
    }

    /** Runs the week; {@code arrival} says at which hour a reading (true) or an entry (false) of an hour comes. */
    private Told run(String name, List<Reading> readings, BiFunction<Double, Boolean, Double> arrival) {
        close();
        clock.set(hour(0));
        stores = SqliteStores.open(file.resolveSibling(name + ".db"), clock);
        alarms = new FailingAlarms(stores.alarms());
        WatchParts parts = parts();
        watch = new LiveWatch(parts, () -> collector, QUICK);
        List<MouldReport> before = new ArrayList<>();
        for (int now = STEP; now <= END; now += STEP) {
            clock.set(hour(now));
            double from = now - STEP;
            double to = now;
            hear(readings.stream()
                    .filter(r -> within(arrival.apply(hourOf(r.measuredAt()), true), from, to))
                    .toList());
            watch.change(
                    DONE.entrySet().stream()
                            .filter(done -> within(arrival.apply(done.getKey(), false), from, to))
                            .map(Map.Entry::getValue)
                            .toList(),
                    "Mirja");
            if (now == BEFORE) {
                before.add(watch.history(TAG).orElseThrow().mould());
            }
        }
        return new Told(
                before,
                watch.board().bags().stream().map(Seen::of).toList(),
                watch.history(TAG).orElseThrow().mould(),
                watch.history(OTHER).orElseThrow().mould(),
                watch.board().alarms().stream()
                        .map(view -> view.alarm().key())
                        .filter(key -> key.subject() instanceof Subject.Bag)
                        .collect(Collectors.toSet()),
                stores.alarms().events(Instant.EPOCH, hour(END + 1)),
                rehearsed(parts));
    }

    private WatchParts parts() {
        WatchParts known = Stations.parts(clock, stores, alarms);
        List<Rule> rules = new ArrayList<>(known.rules());
        rules.add(Scenario.MOULD);
        return new WatchParts(
                known.clock(),
                known.station(),
                known.materials(),
                rules,
                known.organisms(),
                known.crops(),
                known.foliage(),
                known.readings(),
                known.quarantine(),
                known.checks(),
                known.register(),
                known.alarms());
    }

    private static List<RehearsedAlarm> rehearsed(WatchParts parts) {
        Register register = new RegisterRules(
                        parts.station(),
                        parts.materials().keySet(),
                        parts.crops().ids())
                .apply(Register.EMPTY, parts.register().changes());
        BoardInputs season = new BoardInputs(
                hour(END),
                parts.station(),
                register,
                parts.materials(),
                parts.readings(),
                parts.rules(),
                parts.organisms(),
                parts.crops());
        Rehearsal rehearsal = new Rehearsal(season, hour(0), Duration.ofHours(1));
        return rehearsal.heads().stream()
                .flatMap(head -> rehearsal.of(head).stream())
                .toList();
    }

    private static double hourOf(Instant at) {
        return Duration.between(hour(0), at).toSeconds() / 3600.0;
    }

    private static boolean within(double hour, double from, double to) {
        return (hour > from && hour <= to) || (hour == 0 && from == 0);
    }

    private record Told(
            List<MouldReport> before,
            List<Seen> bags,
            MouldReport mould,
            MouldReport other,
            Set<AlarmKey> standing,
            List<AlarmEvent> journal,
            List<RehearsedAlarm> rehearsed) {}

    /** A bag on the board with what tonight is expected to bring, %RH by the hour. */
    private record Seen(
            TagCode tag, RiskAssessment risk, Duration damp, Optional<HeadCare> care, List<Double> tonight) {
        static Seen of(BagView bag) {
            return new Seen(
                    bag.head().tag(),
                    bag.risk(),
                    bag.dampFor(),
                    bag.care(),
                    bag.tonight().stream()
                            .flatMap(t -> Arrays.stream(
                                            t.climate().humidity().middle().toArray())
                                    .boxed())
                            .toList());
        }
    }
}
