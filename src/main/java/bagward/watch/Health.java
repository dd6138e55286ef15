package bagward.watch;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How the running parts are.
 *
 * @param parts each part with its state
 * @param lastTick when the last board was made
 * @param lastTickTook how long that took
 * @param lastMessageAt when the last MQTT message arrived
 * @param intake what came in since the start, and what waits
 * @param quarantined messages in quarantine
 */
public record Health(
        List<Part> parts,
        Optional<Instant> lastTick,
        Duration lastTickTook,
        Optional<Instant> lastMessageAt,
        Intake intake,
        long quarantined) {
    /** Copies the list. */
    public Health {
        parts = List.copyOf(parts);
    }

    /** Whether every part works. */
    public boolean well() {
        return parts.stream().allMatch(Part::well);
    }

    /**
     * A part of the system.
     *
     * @param name short: "collector", "store", "spool", "database" (alarms and quarantine), "board"
     * @param well whether it works
     * @param says one sentence
     */
    public record Part(String name, boolean well, String says) {}
}
