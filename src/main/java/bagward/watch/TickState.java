package bagward.watch;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * How the ticks go.
 *
 * @param at when the last board was made
 * @param took how long that took
 * @param failure why the newest tick failed; empty if it did not
 */
record TickState(Optional<Instant> at, Duration took, Optional<String> failure) {
    static final TickState NONE = new TickState(Optional.empty(), Duration.ZERO, Optional.empty());

    static TickState done(Instant at, Duration took) {
        return new TickState(Optional.of(at), took, Optional.empty());
    }

    TickState failed(RuntimeException e) {
        return new TickState(at, took, Optional.of(String.valueOf(e.getMessage())));
    }

    Health.Part part(Instant now, Duration stale) {
        if (failure.isPresent()) {
            return new Health.Part("board", false, "The board could not be made: " + failure.get());
        }
        if (at.isEmpty()) {
            return new Health.Part("board", false, "No board was made yet.");
        }
        boolean fresh = !at.get().isBefore(now.minus(stale));
        return new Health.Part("board", fresh, "Last made at " + at.get() + " in " + took.toMillis() + " ms.");
    }
}
