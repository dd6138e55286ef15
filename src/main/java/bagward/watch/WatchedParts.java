package bagward.watch;

import bagward.alarm.SystemState;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How the parts are that bring readings.
 *
 * @param parts each with its state
 * @param lastMessageAt when the last message of a sensor arrived
 * @param intake what came in since the start, and what waits
 * @param system how the system is, for its alarms
 */
public record WatchedParts(
        List<Health.Part> parts, Optional<Instant> lastMessageAt, Intake intake, SystemState system) {
    /** Copies the list. */
    public WatchedParts {
        parts = List.copyOf(parts);
    }
}
