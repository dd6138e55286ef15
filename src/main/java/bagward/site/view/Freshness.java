package bagward.site.view;

import bagward.board.Board;
import bagward.board.SensorView;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;

/**
 * How old the data on a page is, and whether that is too old to trust.
 *
 * @param boardAge since the board was made
 * @param readingAge since the newest reading was measured; empty if none was ever heard
 * @param boardLimit from which age on the board counts as old
 * @param readingLimit from which age on readings count as old
 */
public record Freshness(Duration boardAge, Optional<Duration> readingAge, Duration boardLimit, Duration readingLimit) {
    /** A board older than this is old: it is made anew several times a minute. */
    private static final Duration USUAL_LIMIT = Duration.ofMinutes(2);

    /** So long by real time a board may take on a busy machine, however fast the clock runs. */
    private static final Duration REAL_LIMIT = Duration.ofSeconds(30);

    /**
     * The age of a board. Readings are old after two minutes, or after two intervals of the quickest sensor where all
     * sensors are slower than that.
     *
     * @param pace how many times as fast as real time the clock runs that all these times are of
     */
    public static Freshness of(Board board, Instant now, double pace) {
        Duration boardLimit = boardLimit(pace);
        Duration limit = board.sensors().stream()
                .map(SensorView::sensor)
                .map(s -> s.expectedEvery().multipliedBy(2))
                .min(Comparator.naturalOrder())
                .filter(d -> d.compareTo(boardLimit) > 0)
                .orElse(boardLimit);
        return new Freshness(
                notNegative(Duration.between(board.at(), now)),
                board.newestReading().map(at -> notNegative(Duration.between(at, now))),
                boardLimit,
                limit);
    }

    /** From which age on a board counts as old: two minutes, or more of a clock that makes them in a moment. */
    public static Duration boardLimit(double pace) {
        Duration onTheClock = Duration.ofMillis(Math.round(REAL_LIMIT.toMillis() * pace));
        return onTheClock.compareTo(USUAL_LIMIT) > 0 ? onTheClock : USUAL_LIMIT;
    }

    private static Duration notNegative(Duration age) {
        return age.isNegative() ? Duration.ZERO : age;
    }

    /** Whether the watch itself has stopped making boards. */
    public boolean boardOld() {
        return boardAge.compareTo(boardLimit) > 0;
    }

    /** Whether no sensor was heard for too long. */
    public boolean readingsOld() {
        return readingAge.map(age -> age.compareTo(readingLimit) > 0).orElse(true);
    }

    /** Whether anything on the page may no longer be true. */
    public boolean old() {
        return boardOld() || readingsOld();
    }

    /** The age in one sentence. */
    public String sentence() {
        if (boardOld()) {
            return "Stale: this picture is " + Words.span(boardAge) + " old";
        }
        if (readingAge.isEmpty()) {
            return "No sensor was heard yet";
        }
        String age = Words.span(readingAge.get());
        return readingsOld() ? "Stale: newest reading " + age + " ago" : "Newest reading " + age + " ago";
    }

    /** What that means for the reader; empty when all is fresh. */
    public String warning() {
        if (boardOld()) {
            return "The watch has stopped making new pictures. Look at the plants, not at this page, and see that the"
                    + " program runs.";
        }
        if (readingsOld()) {
            return "No sensor is heard. Look at the plants, not at this page, and check broker, network and sensors.";
        }
        return "";
    }
}
