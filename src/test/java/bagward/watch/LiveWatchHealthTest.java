package bagward.watch;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.SystemState;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the running watch says of its own health. */
class LiveWatchHealthTest extends WatchStage {
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
}
