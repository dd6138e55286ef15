package bagward.alarm.seasons;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Several callers as one: whoever calls first. */
record FirstOf(String name, List<Caller> callers) implements Caller {
    @Override
    public Optional<Instant> firstCall(MouldSeason season, SeasonBag bag) {
        return callers.stream()
                .flatMap(caller -> caller.firstCall(season, bag).stream())
                .min(Comparator.naturalOrder());
    }
}
