package bagward.site.api;

import bagward.watch.Health;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How the running parts are, in the interface.
 *
 * @param well whether every part works and boards are made
 * @param parts each part
 * @param lastTick when the last board was made
 * @param lastTickMillis how long that took, ms
 * @param lastMessageAt when the last message arrived
 * @param readingsStored readings that were new in the store since the start; repeats are not counted
 * @param readingsRepeated readings that came again since the start
 * @param readingsContradicted readings since the start that were there with another value; the higher one was kept
 * @param messagesLost messages of quality of service 0 since the start for which there was no room
 * @param readingsWaiting readings that wait in the spool because their store is away
 * @param spoolPercent how full the spool is, %
 * @param quarantined messages in quarantine
 */
public record HealthAnswer(
        boolean well,
        List<PartAnswer> parts,
        Optional<Instant> lastTick,
        long lastTickMillis,
        Optional<Instant> lastMessageAt,
        long readingsStored,
        long readingsRepeated,
        long readingsContradicted,
        long messagesLost,
        long readingsWaiting,
        double spoolPercent,
        long quarantined) {
    /**
     * The answer for a state, asked at an instant. A watch that has stopped making boards is not well.
     *
     * @param boardLimit from which age on the newest board tells that
     */
    public static HealthAnswer of(Health health, Instant now, Duration boardLimit) {
        boolean ticks = health.lastTick()
                .map(at -> Duration.between(at, now).compareTo(boardLimit) <= 0)
                .orElse(false);
        return new HealthAnswer(
                health.well() && ticks,
                health.parts().stream()
                        .map(p -> new PartAnswer(p.name(), p.well(), p.says()))
                        .toList(),
                health.lastTick(),
                health.lastTickTook().toMillis(),
                health.lastMessageAt(),
                health.intake().stored(),
                health.intake().repeated(),
                health.intake().contradicted(),
                health.intake().lost(),
                health.intake().waiting(),
                health.intake().spoolPercent(),
                health.quarantined());
    }

    /**
     * A part in the interface.
     *
     * @param name of the part
     * @param well whether it works
     * @param says one sentence
     */
    public record PartAnswer(String name, boolean well, String says) {}
}
