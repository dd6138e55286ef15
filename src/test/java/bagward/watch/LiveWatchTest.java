package bagward.watch;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.board.Board;
import bagward.fault.RefusedInputException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;

/** The board of the running watch: readings and entries in, boards out. */
class LiveWatchTest extends WatchStage {
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
    void a_stored_register_that_no_longer_fits_the_configuration_is_named() {
        watch.change(List.of(putOn(0)), "Mirja");
        WatchParts known = Stations.parts(clock, stores, alarms);
        WatchParts without = new WatchParts(
                known.clock(),
                known.station(),
                Map.of(),
                known.rules(),
                known.organisms(),
                known.crops(),
                known.foliage(),
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
