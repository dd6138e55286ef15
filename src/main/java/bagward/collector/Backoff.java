package bagward.collector;

import java.time.Duration;

/**
 * How long to wait before the next try.
 *
 * @param first after the first failure
 * @param longest never longer
 */
public record Backoff(Duration first, Duration longest) {
    /** The wait after so many failures in a row, from 1: twice as long each time. */
    public Duration after(int failures) {
        int doublings = Math.min(Math.max(failures, 1) - 1, 20);
        Duration wait = first.multipliedBy(1L << doublings);
        return wait.compareTo(longest) > 0 ? longest : wait;
    }
}
