package bagward.watch;

import java.time.Duration;

/**
 * How the watch runs.
 *
 * @param shortestPause least time between the starts of two boards
 * @param longestPause most time between them, also when nothing was heard
 * @param window how far back readings are held in memory; the board looks back 21 days at most
 * @param futureTolerance how far ahead of the station's clock an entered change may lie
 */
record WatchSettings(Duration shortestPause, Duration longestPause, Duration window, Duration futureTolerance) {
    /** What suits a station: a board each second at most and each ten seconds at least. */
    static final WatchSettings USUAL = new WatchSettings(
            Duration.ofSeconds(1), Duration.ofSeconds(10), Duration.ofDays(22), Duration.ofMinutes(5));
}
