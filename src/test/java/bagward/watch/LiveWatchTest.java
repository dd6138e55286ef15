package bagward.watch;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmAct;
import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmKey;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Aside;
import bagward.alarm.RuleId;
import bagward.alarm.Subject;
import bagward.alarm.SystemState;
import bagward.bag.Line;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.board.AlarmView;
import bagward.board.Board;
import bagward.board.Scenario;
import bagward.climate.Reading;
import bagward.climate.SaltCheck;
import bagward.climate.SaturatedSalt;
import bagward.climate.SeriesId;
import bagward.fault.RefusedInputException;
import bagward.station.House;
import bagward.station.Spot;
import bagward.store.SqliteStores;
import bagward.units.Celsius;
import bagward.units.Quantity;
import bagward.units.RelativeHumidity;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The running watch on a real store, with a clock that the test sets. */
class LiveWatchTest {
    private static final WatchSettings QUICK =
            new WatchSettings(Duration.ofMillis(5), Duration.ofMillis(50), Duration.ofDays(22), Duration.ofMinutes(5));

    private static final TagCode TAG = new TagCode("R26-0147");
    private static final AlarmKey DAMP = new AlarmKey(new RuleId("damp"), new Subject.Bag(TAG));

    private static final Intake TWENTY_FOUR = new Intake(24, 0, 0, 0, 0, 0);

    private final HandClock clock = new HandClock(hour(0));
    private final Path file;
    private SqliteStores stores;
    private FailingAlarms alarms;
    private LiveWatch watch;
    private volatile WatchedParts collector = new WatchedParts(
            List.of(new Health.Part("collector", true, "receives")),
            Optional.of(hour(1)),
            TWENTY_FOUR,
            SystemState.WELL);

    LiveWatchTest(@TempDir Path folder) {
        file = folder.resolve("bagward.db");
        stores = SqliteStores.open(file, clock);
        alarms = new FailingAlarms(stores.alarms());
        watch = open();
    }

    @AfterEach
    void close() {
        watch.close();
        stores.close();
    }

    private LiveWatch open() {
        return new LiveWatch(Stations.parts(clock, stores, alarms), () -> collector, QUICK);
    }

    private void restart() {
        close();
        stores = SqliteStores.open(file, clock);
        alarms = new FailingAlarms(stores.alarms());
        watch = open();
    }

    private void start() {
        watch.start();
    }

    private static Instant hour(double hours) {
        return Scenario.START.plusSeconds(Math.round(hours * 3600));
    }

    private static RegisterChange putOn(double hour) {
        House house = Stations.station().houses().get(0);
        return new RegisterChange.PutOn(
                TAG,
                hour(hour),
                new Spot(house.id(), house.bays().get(0).id(), 3),
                Stations.material(),
                new Line("Hvidå 12"),
                new Line("Hvidå 12"),
                new Pollination(hour(hour), "Mirja", PollinationKind.SELF, 8, Optional.empty()));
    }

    /** Readings of the first house every five minutes in [from, to) hours. */
    private static List<Reading> house(double from, double to, double percent) {
        List<Reading> readings = new ArrayList<>();
        for (Instant at = hour(from); at.isBefore(hour(to)); at = at.plusSeconds(300)) {
            readings.add(Reading.of(new SeriesId(Stations.post().id(), Quantity.TEMPERATURE), at, 12));
            readings.add(Reading.of(new SeriesId(Stations.post().id(), Quantity.HUMIDITY), at, percent));
        }
        return readings;
    }

    private void hear(List<Reading> readings) {
        stores.readings().append(readings);
        watch.stored(readings);
    }

    /** Sets the clock and waits until a board of that time is there. */
    private Board boardAt(double hour) {
        clock.set(hour(hour));
        await().until(() -> watch.board().at().equals(hour(hour)));
        return watch.board();
    }

    private Optional<AlarmPhase> phase() {
        return alarms.loadAlarms().find(DAMP).map(Alarm::phase);
    }

    @Test
    void the_first_board_is_there_before_anything_was_heard() {
        assertEquals(hour(0), watch.board().at());
        assertEquals(List.of(), watch.board().bags());
    }

    @Test
    void an_entered_bag_is_on_the_board_when_the_entry_returns_and_after_a_restart() {
        watch.change(List.of(putOn(0)), "Mirja");
        assertTrue(watch.board().find(TAG).isPresent());
        restart();
        assertTrue(watch.board().find(TAG).isPresent());
        assertEquals(List.of(putOn(0)), watch.register().changes());
    }

    @Test
    void a_change_that_lies_in_the_future_or_breaks_a_rule_is_refused_with_every_fault_and_nothing_is_entered() {
        RegisterChange unknown = new RegisterChange.TakeOff(new TagCode("NOBODY"), hour(0));
        RefusedInputException refusal =
                assertThrows(RefusedInputException.class, () -> watch.change(List.of(putOn(0.2), unknown), "Mirja"));
        assertEquals(2, refusal.faults().size());
        assertEquals("change 1, at", refusal.faults().get(0).place());
        assertTrue(refusal.faults().get(0).rule().contains("the station's clock says 2026-02-01T00:00:00Z"));
        assertTrue(refusal.faults().get(1).place().startsWith("change 2"), refusal.toString());
        assertEquals(List.of(), stores.register().changes());
        assertEquals(List.of(), watch.board().bags());
    }

    @Test
    void a_change_a_little_ahead_of_the_clock_is_taken() {
        watch.change(List.of(putOn(0.08)), "Mirja");
        assertTrue(watch.register().find(TAG).isPresent());
    }

    @Test
    void readings_are_on_a_board_soon_after_they_were_stored() {
        start();
        clock.set(hour(2));
        hear(house(0, 2, 60));
        await().until(() -> watch.board().newestReading().equals(Optional.of(hour(2).minusSeconds(300))));
        assertEquals(60, watch.board().houses().get(0).humidity().orElseThrow().value());
    }

    @Test
    void readings_in_any_order_and_in_any_pieces_give_the_board_of_a_start_with_all_of_them() {
        watch.change(List.of(putOn(0)), "Mirja");
        List<Reading> readings = new ArrayList<>(house(0, 9, 92));
        Collections.shuffle(readings, new Random(3));
        clock.set(hour(9));
        for (int i = 0; i < readings.size(); i += 25) {
            hear(readings.subList(i, Math.min(readings.size(), i + 25)));
        }
        start();
        Board piecemeal = await().until(
                        () -> watch.board(),
                        board -> board.at().equals(hour(9)) && !board.alarms().isEmpty());
        restart();
        assertEquals(piecemeal.bags(), watch.board().bags());
        assertEquals(piecemeal.houses(), watch.board().houses());
    }

    @Test
    void a_late_reading_changes_the_past() {
        watch.change(List.of(putOn(0)), "Mirja");
        start();
        hear(house(7, 8, 92));
        Duration before = boardAt(8).find(TAG).orElseThrow().dampFor();
        hear(house(0, 7, 92));
        await().until(() -> !watch.board().find(TAG).orElseThrow().dampFor().equals(before));
        assertTrue(watch.board().find(TAG).orElseThrow().dampFor().compareTo(before) > 0);
    }

    @Test
    void a_kept_check_of_a_sensor_counts_from_its_time_on_and_leaves_what_is_stored_as_it_came() {
        SaltCheck check = new SaltCheck(
                Stations.post().id(),
                hour(6),
                new SaltCheck.Point(SaturatedSalt.MAGNESIUM_CHLORIDE, new Celsius(20), new RelativeHumidity(40)),
                new SaltCheck.Point(SaturatedSalt.SODIUM_CHLORIDE, new Celsius(20), new RelativeHumidity(82.41)));
        List<Reading> raw = house(0, 8, 92);
        hear(raw);
        stores.sensorChecks().add(check, "Mirja", hour(7));
        restart();
        start();
        watch.change(List.of(putOn(0)), "Mirja");
        boardAt(8);
        BagHistory history = watch.history(TAG).orElseThrow();
        double[] house = history.house().humidity().toArray();
        assertEquals(92, house[5 * 60], 1e-9);
        // Gain and offset of the line through the two points: 42.41 on both sides, 6.93 %RH too high.
        assertEquals(92 - 6.93, house[7 * 60], 0.01);
        assertEquals(
                raw.stream()
                        .filter(r -> r.series().quantity() == Quantity.HUMIDITY)
                        .toList(),
                stores.readings().readings(new SeriesId(Stations.post().id(), Quantity.HUMIDITY), hour(0), hour(8)));
    }

    @Test
    void a_backlog_of_what_is_long_over_raises_nothing_and_is_in_the_history_within_a_tick() {
        watch.change(List.of(putOn(0)), "Mirja");
        start();
        hear(house(0, 2, 60));
        hear(house(20, 30, 60));
        boardAt(30);
        assertFalse(
                watch.history(TAG).orElseThrow().house().humidity().known(600), "a gap of eighteen hours stays one");
        hear(house(2, 20, 96));
        await().atMost(Duration.ofSeconds(2))
                .until(() -> watch.history(TAG).orElseThrow().house().humidity().known(600));
        Board after = boardAt(30.01);
        assertEquals(List.of(), ofBags(after), "eighteen damp hours, but they are over");
        assertEquals(Optional.empty(), phase());
        BagHistory history = watch.history(TAG).orElseThrow();
        assertEquals(96, history.house().humidity().valueOrNaN(600));
        assertTrue(history.bag().humidity().middle().valueOrNaN(600) > 90, "damp in the bag");
    }

    @Test
    void the_board_after_a_backlog_in_random_order_is_that_of_readings_that_came_in_time() {
        watch.change(List.of(putOn(0)), "Mirja");
        hear(house(0, 12, 96));
        clock.set(hour(30));
        hear(house(12, 30, 60));
        restart();
        Board inTime = watch.board();

        stores.close();
        watch.close();
        stores = SqliteStores.open(file.resolveSibling("late.db"), clock);
        alarms = new FailingAlarms(stores.alarms());
        watch = open();
        watch.change(List.of(putOn(0)), "Mirja");
        hear(house(20, 30, 60));
        List<Reading> backlog = new ArrayList<>(house(0, 12, 96));
        backlog.addAll(house(12, 20, 60));
        Collections.shuffle(backlog, new Random(8));
        hear(backlog);
        watch.change(List.of(), "Mirja");
        assertEquals(inTime.bags(), watch.board().bags());
        assertEquals(ofBags(inTime), ofBags(watch.board()));
    }

    private static List<AlarmView> ofBags(Board board) {
        return board.alarms().stream()
                .filter(view -> view.alarm().key().subject() instanceof Subject.Bag)
                .toList();
    }

    @Test
    void an_alarm_whose_delay_runs_survives_a_restart_and_is_raised_when_the_delay_is_over() {
        watch.change(List.of(putOn(0)), "Mirja");
        start();
        hear(house(0, 4, 95));
        boardAt(4);
        assertEquals(Optional.of(AlarmPhase.PENDING), phase());
        Instant since = alarms.loadAlarms().find(DAMP).orElseThrow().since();

        restart();
        start();
        hear(house(4, 7, 95));
        boardAt(7);
        await().until(() -> phase().equals(Optional.of(AlarmPhase.UNACKNOWLEDGED)));
        Alarm raised = alarms.loadAlarms().find(DAMP).orElseThrow();
        assertEquals(since, raised.since());
    }

    @Test
    void an_acknowledged_alarm_is_so_on_the_board_at_once_and_after_a_restart() {
        watch.change(List.of(putOn(0)), "Mirja");
        clock.set(hour(7));
        hear(house(0, 7, 95));
        start();
        await().until(() -> phase().equals(Optional.of(AlarmPhase.UNACKNOWLEDGED)));

        assertTrue(watch.acknowledge(DAMP, "Ida"));
        assertEquals(AlarmPhase.ACKNOWLEDGED, listed().phase());
        assertFalse(watch.acknowledge(DAMP, "Per"), "it was acknowledged already");
        assertFalse(watch.acknowledge(new AlarmKey(new RuleId("hot"), DAMP.subject()), "Per"));
        AlarmEvent event = alarms.newestEvents(1).get(0);
        assertEquals("Ida", event.by());
        assertEquals(AlarmPhase.ACKNOWLEDGED, event.to());

        restart();
        assertEquals(Optional.of("Ida"), listed().acknowledgedBy());
    }

    @Test
    void a_shelved_alarm_is_off_the_list_at_once_and_after_a_restart_and_comes_back_by_itself() {
        watch.change(List.of(putOn(0)), "Mirja");
        clock.set(hour(7));
        hear(house(0, 20, 95));
        start();
        await().until(() -> phase().equals(Optional.of(AlarmPhase.UNACKNOWLEDGED)));

        watch.act(new AlarmAct.Shelve(DAMP, "Ida", hour(9), "bay is washed"));
        assertEquals(List.of(), listedDamp());
        Aside aside = watch.board().setAside().get(0).alarm().aside().orElseThrow();
        assertEquals(new Aside("Ida", hour(7), Optional.of(hour(9)), "bay is washed"), aside);
        assertEquals("bay is washed", alarms.newestEvents(1).get(0).why());

        restart();
        assertEquals(List.of(), listedDamp());
        start();
        boardAt(9);
        await().until(() -> phase().equals(Optional.of(AlarmPhase.UNACKNOWLEDGED)));
        assertEquals(AlarmPhase.UNACKNOWLEDGED, listed().phase());
    }

    @Test
    void an_alarm_out_of_service_stays_off_until_somebody_brings_it_back() {
        watch.change(List.of(putOn(0)), "Mirja");
        watch.act(new AlarmAct.TakeOutOfService(DAMP, "Ida", "bag is part of a trial"));
        hear(house(0, 40, 95));
        start();
        boardAt(30);
        assertEquals(Optional.of(AlarmPhase.OUT_OF_SERVICE), phase());
        watch.act(new AlarmAct.BringBack(DAMP, "Per"));
        assertEquals(AlarmPhase.UNACKNOWLEDGED, listed().phase());
        assertEquals(
                List.of("Ida", "Per", "rule"),
                alarms.events(hour(0), hour(31)).stream()
                        .filter(event -> event.key().equals(DAMP))
                        .map(AlarmEvent::by)
                        .toList());
    }

    @Test
    void an_act_that_is_not_allowed_is_refused_and_changes_nothing() {
        assertThrows(
                RefusedInputException.class,
                () -> watch.act(new AlarmAct.Shelve(DAMP, "Ida", hour(9), "there is no such alarm")));
        assertEquals(List.of(), alarms.newestEvents(10));
    }

    private Alarm listed() {
        return listedDamp().get(0);
    }

    private List<Alarm> listedDamp() {
        return watch.board().alarms().stream()
                .map(view -> view.alarm())
                .filter(alarm -> alarm.key().equals(DAMP))
                .toList();
    }

    @Test
    void alarms_are_saved_when_they_change_and_not_with_every_board() {
        watch.change(List.of(putOn(0)), "Mirja");
        start();
        hear(house(0, 4, 95));
        boardAt(4);
        int saves = alarms.saves();
        for (int minute = 1; minute <= 10; minute++) {
            boardAt(4 + minute / 60.0);
        }
        assertEquals(saves, alarms.saves());
    }

    @Test
    void alarms_are_on_the_board_while_the_store_is_away_and_saved_with_their_events_when_it_is_back() {
        watch.change(List.of(putOn(0)), "Mirja");
        start();
        alarms.away(true);
        clock.set(hour(7));
        hear(house(0, 7, 95));
        await().until(() -> !watch.board().alarms().isEmpty());
        assertFalse(part("database").well());
        assertTrue(
                part("database").says().contains("the disk is away"),
                part("database").says());
        assertEquals(Optional.empty(), phase());

        alarms.away(false);
        await().until(() -> part("database").well());
        assertEquals(Optional.of(AlarmPhase.UNACKNOWLEDGED), phase());
        assertTrue(
                alarms.newestEvents(10).stream().anyMatch(event -> event.key().equals(DAMP)));
    }

    @Test
    void a_board_that_could_not_be_made_is_a_fault_until_it_is_made_again() {
        start();
        clock.breakDown();
        await().until(() -> !part("board").well());
        assertTrue(
                part("board").says().contains("the clock is broken"),
                part("board").says());
        clock.set(hour(1));
        clock.repair();
        await().until(() -> part("board").well());
        await().until(() -> watch.board().at().equals(hour(1)));
    }

    @Test
    void a_collector_that_is_not_well_makes_the_whole_unwell() {
        assertTrue(watch.health().well(), watch.health().toString());
        assertEquals(Optional.of(hour(1)), watch.health().lastMessageAt());
        assertEquals(Optional.of(hour(0)), watch.health().lastTick());
        assertEquals(24, watch.health().intake().stored());
        collector = new WatchedParts(
                List.of(new Health.Part("collector", false, "no broker")),
                Optional.empty(),
                TWENTY_FOUR,
                SystemState.WELL);
        assertFalse(watch.health().well());
    }

    @Test
    void a_store_that_cannot_be_read_is_a_fault_and_not_an_error() {
        stores.close();
        assertFalse(part("database").well());
        assertTrue(
                part("database").says().contains("is closed"), part("database").says());
    }

    private Health.Part part(String name) {
        return watch.health().parts().stream()
                .filter(part -> part.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void listeners_hear_of_each_change_until_they_leave() {
        List<Board> heard = new CopyOnWriteArrayList<>();
        Watch.Subscription subscription = watch.listen(heard::add);
        watch.change(List.of(putOn(0)), "Mirja");
        await().until(() ->
                !heard.isEmpty() && heard.get(heard.size() - 1).find(TAG).isPresent());
        subscription.close();
        int before = heard.size();
        watch.change(List.of(new RegisterChange.TakeOff(TAG, hour(0.05))), "Mirja");
        assertEquals(before, heard.size());
    }

    @Test
    void the_history_of_a_head_is_that_of_its_newest_bag_and_does_not_depend_on_the_window() {
        watch.change(List.of(putOn(0)), "Mirja");
        stores.readings().append(house(0, 10, 70));
        clock.set(hour(10));
        watch.change(List.of(new RegisterChange.TakeOff(TAG, hour(9))), "Mirja");
        BagHistory fresh = watch.history(TAG).orElseThrow();
        assertFalse(Double.isNaN(humidity(fresh)[100]));
        assertEquals(Optional.of(hour(9)), fresh.bagging().takenOff());

        clock.set(hour(24 * 40));
        restart();
        BagHistory old = watch.history(TAG).orElseThrow();
        assertArrayEquals(humidity(fresh), humidity(old));
        assertEquals(Optional.empty(), watch.history(new TagCode("NOBODY")));
    }

    private static double[] humidity(BagHistory history) {
        return history.bag().humidity().middle().toArray();
    }

    @Test
    void a_stored_register_that_no_longer_fits_the_configuration_is_named() {
        watch.change(List.of(putOn(0)), "Mirja");
        WatchParts known = Stations.parts(clock, stores, alarms);
        WatchParts without = new WatchParts(
                known.clock(),
                known.station(),
                Map.of(),
                known.rules(),
                known.organisms(),
                known.crop(),
                known.readings(),
                known.quarantine(),
                known.checks(),
                known.register(),
                known.alarms());
        RefusedInputException refusal =
                assertThrows(RefusedInputException.class, () -> new LiveWatch(without, () -> collector, QUICK).close());
        assertTrue(refusal.faults().get(0).place().startsWith("stored register, change 1"), refusal.toString());
    }
}
