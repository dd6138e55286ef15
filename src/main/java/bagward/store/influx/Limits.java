package bagward.store.influx;

import java.time.Duration;

/**
 * What is asked of a server at most.
 *
 * @param patience how long one request may take
 * @param answerBytes how long one answer may be; in memory it is some ten times that
 * @param page readings of one answer to a query
 */
record Limits(Duration patience, long answerBytes, int page) {
    /** The usual ones. */
    static final Limits USUAL = new Limits(Duration.ofSeconds(30), 16L << 20, 10_000);
}
