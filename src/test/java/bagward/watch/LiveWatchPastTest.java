package bagward.watch;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.Subject;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.board.AlarmView;
import bagward.board.Board;
import bagward.climate.Reading;
import bagward.climate.SaltCheck;
import bagward.climate.SaturatedSalt;
import bagward.climate.SeriesId;
import bagward.store.SqliteStores;
import bagward.units.Celsius;
import bagward.units.Quantity;
import bagward.units.RelativeHumidity;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Readings that come late, in any order or corrected: the past of the running watch follows. */
class LiveWatchPastTest extends WatchStage {
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

    private static List<AlarmView> ofBags(Board board) {
        return board.alarms().stream()
                .filter(view -> view.alarm().key().subject() instanceof Subject.Bag)
                .toList();
    }

    private static double[] humidity(BagHistory history) {
        return history.bag().humidity().middle().toArray();
    }
}
