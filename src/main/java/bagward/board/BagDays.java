package bagward.board;

import bagward.bag.Bagging;
import bagward.bag.Register;
import java.time.Duration;
import java.time.Instant;

/** How many bags hung for how long: what a load of alarms is measured against. */
public final class BagDays {
    private static final double SECONDS = Duration.ofDays(1).toSeconds();

    private BagDays() {}

    /** Days of all bags together between two instants. */
    public static double between(Register register, Instant from, Instant to) {
        return register.heads().stream()
                .flatMap(head -> head.baggings().stream())
                .mapToDouble(bagging -> days(bagging, from, to))
                .sum();
    }

    private static double days(Bagging bagging, Instant from, Instant to) {
        Instant start = bagging.putOn().isAfter(from) ? bagging.putOn() : from;
        Instant end = bagging.takenOff().filter(off -> off.isBefore(to)).orElse(to);
        return Math.max(0, Duration.between(start, end).toSeconds() / SECONDS);
    }
}
