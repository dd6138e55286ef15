package bagward.watch;

import bagward.bag.Head;
import bagward.bag.Register;
import java.time.Duration;
import java.time.Instant;
import java.util.stream.Stream;

/** How far back single readings must be kept. A pure function of time, setting and register. */
final class ReadingLimit {
    /** The air of the days before a bag is part of what is known of it. */
    private static final Duration BEFORE_A_HEAD = Duration.ofDays(3);

    private ReadingLimit() {}

    /**
     * Readings before this may go: older than the setting, and before every head that is still worked on, so that its
     * history is whole on the day of its harvest.
     */
    static Instant of(Instant now, Duration keep, Register register) {
        Instant limit = now.minus(keep);
        return register.heads().stream()
                .filter(head -> head.ending().isEmpty())
                .flatMap(ReadingLimit::begins)
                .map(begin -> begin.minus(BEFORE_A_HEAD))
                .filter(limit::isAfter)
                .min(Instant::compareTo)
                .orElse(limit);
    }

    private static Stream<Instant> begins(Head head) {
        return Stream.concat(
                Stream.of(head.pollination().at()), head.baggings().stream().map(bagging -> bagging.putOn()));
    }
}
