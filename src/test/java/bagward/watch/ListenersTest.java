package bagward.watch;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.board.Board;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Who is told of new boards, and who keeps whom waiting. */
class ListenersTest {
    private final Listeners listeners = new Listeners();

    private static Board board(long second) {
        Instant at = Instant.ofEpochSecond(second);
        return new Board(at, "Vindhede", ZoneOffset.UTC, List.of(), List.of(), List.of(), List.of(), Optional.empty());
    }

    @AfterEach
    void close() {
        listeners.close();
    }

    @Test
    void a_listener_that_blocks_keeps_neither_the_watch_nor_another_listener_waiting() {
        CountDownLatch gate = new CountDownLatch(1);
        List<Board> slow = new CopyOnWriteArrayList<>();
        List<Board> quick = new CopyOnWriteArrayList<>();
        listeners.add(board -> {
            awaitQuietly(gate);
            slow.add(board);
        });
        listeners.add(quick::add);
        for (int i = 1; i <= 5; i++) {
            listeners.publish(board(i));
            int count = i;
            await().until(() -> quick.size() == count);
        }
        assertEquals(List.of(), slow);
        gate.countDown();
        await().until(() -> slow.size() == 2);
        assertEquals(List.of(board(1), board(5)), slow);
    }

    @Test
    void a_listener_that_fails_gets_the_next_board_all_the_same() {
        List<Board> heard = new CopyOnWriteArrayList<>();
        listeners.add(board -> {
            heard.add(board);
            throw new IllegalStateException("the listener fails");
        });
        listeners.publish(board(1));
        await().until(() -> heard.size() == 1);
        listeners.publish(board(2));
        await().until(() -> heard.size() == 2);
    }

    @Test
    void a_closed_subscription_hears_nothing_more() {
        List<Board> closed = new CopyOnWriteArrayList<>();
        List<Board> open = new CopyOnWriteArrayList<>();
        listeners.add(closed::add).close();
        listeners.add(open::add);
        listeners.publish(board(1));
        await().until(() -> open.size() == 1);
        assertEquals(List.of(), closed);
    }

    private static void awaitQuietly(CountDownLatch gate) {
        try {
            gate.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
