package bagward.message;

import bagward.alarm.Priority;
import java.time.Duration;

/**
 * How long news waits for company. Ours, all of it; high is told almost at once, the rest can be late by minutes.
 *
 * @param gather how long the first news of a rule waits for others of that rule
 * @param apart least time between two messages about one rule
 */
record Pace(Duration gather, Duration apart) {
    /** So many waiting together are told without waiting longer. */
    static final int MANY = 10;

    /** The same alarm is not told as raised again within this time, however often it comes and goes. */
    static final Duration SAME_AGAIN = Duration.ofHours(1);

    /** How often people are told again of one alarm. */
    static final int MOST_REMINDERS = 3;

    private static final Pace URGENT = new Pace(Duration.ofSeconds(1), Duration.ofMinutes(5));
    private static final Pace CALM = new Pace(Duration.ofMinutes(10), Duration.ofMinutes(30));

    /** The pace of a priority. */
    static Pace of(Priority priority, Told.News news) {
        return priority == Priority.HIGH && news != Told.News.RETURNED ? URGENT : CALM;
    }
}
