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
public record WatchSettings(Duration shortestPause, Duration longestPause, Duration window, Duration futureTolerance) {
    /** What suits a station: a board each second at most and each ten seconds at least. */
    public static final WatchSettings USUAL = new WatchSettings(
            Duration.ofSeconds(1), Duration.ofSeconds(10), Duration.ofDays(22), Duration.ofMinutes(5));

    /** Boards follow a clock that runs so many times as fast as real time at least once a minute of that clock. */
    public WatchSettings forClockSpeed(double speed) {
        return new WatchSettings(
                shorter(shortestPause, Duration.ofSeconds(30), speed),
                shorter(longestPause, Duration.ofSeconds(60), speed),
                window,
                futureTolerance);
    }

    private static Duration shorter(Duration usual, Duration onTheClock, double speed) {
        Duration real = Duration.ofMillis((long) Math.ceil(onTheClock.toMillis() / speed));
        return real.compareTo(usual) < 0 ? real : usual;
    }
}
