package bagward.mould;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Heat in a bag since it was put on.
 *
 * @param now band at the end of the climate, from its last known cell
 * @param worst worst band so far
 * @param lastHeat end of the last cell in which it was HEAT or worse; empty if it never was
 * @param reason in numbers
 * @param unknownHours time without a temperature, h
 */
public record HeatAssessment(
        HeatBand now, HeatBand worst, Optional<Instant> lastHeat, String reason, double unknownHours) {
    /** How long the head has had to recover since the last heat; empty if there was none. */
    public Optional<Duration> sinceHeat(Instant now) {
        return lastHeat.map(last -> Duration.between(last, now));
    }
}
