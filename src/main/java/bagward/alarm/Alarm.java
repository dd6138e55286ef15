package bagward.alarm;

import java.time.Instant;
import java.util.Optional;

/**
 * One alarm as it stands.
 *
 * @param key rule and subject
 * @param phase its state
 * @param since event time from which the condition holds
 * @param raisedAt when it was raised
 * @param acknowledgedAt when a person confirmed it
 * @param acknowledgedBy who did
 * @param clearSince event time from which the condition has been gone, while the off-delay runs or after it returned
 * @param message the newest sentence about it
 */
public record Alarm(
        AlarmKey key,
        AlarmPhase phase,
        Instant since,
        Optional<Instant> raisedAt,
        Optional<Instant> acknowledgedAt,
        Optional<String> acknowledgedBy,
        Optional<Instant> clearSince,
        String message) {}
