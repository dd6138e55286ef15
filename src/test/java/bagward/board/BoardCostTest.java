package bagward.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import bagward.alarm.AlarmBook;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class BoardCostTest {
    /** Ten times and more of what it takes on two slow cores, so that only a change of order of magnitude fails. */
    private static final Duration FAR_TOO_LONG = Duration.ofSeconds(20);

    @Test
    void a_board_of_500_bags_of_7_days_is_made_within_a_tick() {
        BoardInputs in = BusyStation.inputs(500, 7);
        Board board = assertTimeout(FAR_TOO_LONG, () -> Scenario.tick(in, AlarmBook.EMPTY));
        assertEquals(500, board.bags().size());
    }
}
