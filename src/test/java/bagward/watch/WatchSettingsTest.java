package bagward.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import org.junit.jupiter.api.Test;

class WatchSettingsTest {
    @Test
    void on_a_clock_of_real_time_nothing_changes() {
        assertEquals(WatchSettings.USUAL, WatchSettings.USUAL.forClockSpeed(1));
    }

    @Test
    void on_a_clock_that_hurries_a_board_is_made_each_minute_of_that_clock() {
        WatchSettings hurried = WatchSettings.USUAL.forClockSpeed(360);
        assertEquals(Duration.ofMillis(84), hurried.shortestPause());
        assertEquals(Duration.ofMillis(167), hurried.longestPause());
        assertEquals(WatchSettings.USUAL.window(), hurried.window());
    }
}
