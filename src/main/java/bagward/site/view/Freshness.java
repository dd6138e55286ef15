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
 * @param readingLimit from which age on readings count as old
 */
public record Freshness(Duration boardAge, Optional<Duration> readingAge, Duration readingLimit) {
    /** A board older than this is old: it is made anew several times a minute. */
    public static final Duration BOARD_LIMIT = Duration.ofMinutes(2);

    /**
     * The age of a board. Readings are old after two minutes, or after two intervals of the quickest sensor where all
     * sensors are slower than that.
     */
    public static Freshness of(Board board, Instant now) {
        Duration limit = board.sensors().stream()
                .map(SensorView::sensor)
                .map(s -> s.expectedEvery().multipliedBy(2))
                .min(Comparator.naturalOrder())
                .filter(d -> d.compareTo(BOARD_LIMIT) > 0)
                .orElse(BOARD_LIMIT);
        return new Freshness(
                notNegative(Duration.between(board.at(), now)),
                board.newestReading().map(at -> notNegative(Duration.between(at, now))),
                limit);
    }

    private static Duration notNegative(Duration age) {
        return age.isNegative() ? Duration.ZERO : age;
    }

    /** Whether the watch itself has stopped making boards. */
    public boolean boardOld() {
        return boardAge.compareTo(BOARD_LIMIT) > 0;
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
