package bagward.watch;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How the parts are that bring readings.
 *
 * @param parts each with its state
 * @param lastMessageAt when the last message of a sensor arrived
 */
public record WatchedParts(List<Health.Part> parts, Optional<Instant> lastMessageAt) {
    /** Copies the list. */
    public WatchedParts {
        parts = List.copyOf(parts);
    }
}
