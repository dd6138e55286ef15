package bagward.site.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.board.Board;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From which age on a picture is called old, by the pace of the clock that its age is counted by. */
class FreshnessTest {
    private static final Instant MADE = Instant.parse("2027-05-11T07:40:00Z");

    @ParameterizedTest
    @CsvSource({"1, 120", "4, 120", "30, 900", "360, 10800", "600, 18000"})
    void a_board_is_old_after_two_minutes_or_half_a_minute_of_real_time_if_that_is_longer(double pace, long seconds) {
        assertFalse(aged(pace, seconds).old());
        Freshness late = aged(pace, seconds + 1);
        assertTrue(late.boardOld());
        assertTrue(late.sentence().startsWith("Stale: this picture is"), late.sentence());
        assertEquals(Duration.ofSeconds(seconds), Freshness.boardLimit(pace));
    }

    @ParameterizedTest
    @CsvSource({"1, 121, true", "360, 121, false", "360, 10801, true"})
    void readings_are_old_by_the_same_pace(double pace, long seconds, boolean old) {
        Board board = board(Optional.of(MADE.minusSeconds(seconds)));
        assertEquals(old, Freshness.of(board, MADE, pace).readingsOld());
    }

    private static Freshness aged(double pace, long seconds) {
        Instant now = MADE.plusSeconds(seconds);
        return Freshness.of(board(Optional.of(now)), now, pace);
    }

    private static Board board(Optional<Instant> newestReading) {
        return new Board(MADE, "Lyngbakke", ZoneOffset.UTC, List.of(), List.of(), List.of(), List.of(), newestReading);
    }
}
