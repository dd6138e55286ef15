package bagward.alarm.seasons;

import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/**
 * Knows the true climate of every bag and what gathers there in its world, all but the threshold of a head: about the best
 * that any alarm could do without seeing the head.
 */
record KnowingCaller(MouldWorld world, double dose) implements Caller {
    @Override
    public Optional<Instant> firstCall(MouldSeason season, SeasonBag bag) {
        return world.mould(season.seed()).reaches(bag.truth(), dose);
    }

    @Override
    public String name() {
        return String.format(Locale.ROOT, "knows all but the head, dose %.2f", dose);
    }
}
