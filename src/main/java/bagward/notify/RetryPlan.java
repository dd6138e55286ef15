package bagward.notify;

import bagward.collector.Backoff;
import java.time.Duration;
import java.util.random.RandomGenerator;

/**
 * When what failed is tried again. Waits double, up to a longest one, and are stretched by a random share so that many
 * senders do not come back at the same moment.
 *
 * @param channel waits of a channel that is out of reach
 * @param parcel waits of a parcel that could not be handed over
 * @param refused waits of a parcel that the other side refused
 * @param giveUpAfter age at which a refused parcel is given up; what is merely out of reach never is
 * @param jitter largest share by which a wait is stretched, 0 to 1
 */
public record RetryPlan(Backoff channel, Backoff parcel, Backoff refused, Duration giveUpAfter, double jitter) {
    /** Ours: a channel is looked at once a minute at least; a refused message is tried for three days. */
    public static final RetryPlan USUAL = new RetryPlan(
            new Backoff(Duration.ofSeconds(2), Duration.ofMinutes(1)),
            new Backoff(Duration.ofSeconds(2), Duration.ofMinutes(5)),
            new Backoff(Duration.ofSeconds(30), Duration.ofHours(1)),
            Duration.ofDays(3),
            0.25);

    /** A wait after so many failures in a row. */
    Duration wait(Backoff backoff, int failures, RandomGenerator random) {
        Duration plain = backoff.after(failures);
        return plain.plusMillis((long) (plain.toMillis() * jitter * random.nextDouble()));
    }
}
