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
 * @param aside who hid it and why, while it is shelved, suppressed or out of service
 */
public record Alarm(
        AlarmKey key,
        AlarmPhase phase,
        Instant since,
        Optional<Instant> raisedAt,
        Optional<Instant> acknowledgedAt,
        Optional<String> acknowledgedBy,
        Optional<Instant> clearSince,
        String message,
        Optional<Aside> aside) {

    /** An alarm that nobody has hidden. */
    public Alarm(
            AlarmKey key,
            AlarmPhase phase,
            Instant since,
            Optional<Instant> raisedAt,
            Optional<Instant> acknowledgedAt,
            Optional<String> acknowledgedBy,
            Optional<Instant> clearSince,
            String message) {
        this(key, phase, since, raisedAt, acknowledgedAt, acknowledgedBy, clearSince, message, Optional.empty());
    }

    /** Whose condition holds since an instant and which is not raised yet. */
    static Alarm pending(AlarmKey key, Instant since, String message) {
        return new Alarm(
                key,
                AlarmPhase.PENDING,
                since,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                message);
    }

    /** The same, raised anew for people to confirm. */
    Alarm raised(Instant now) {
        return new Alarm(
                key,
                AlarmPhase.UNACKNOWLEDGED,
                since,
                Optional.of(now),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                message);
    }

    /** The same, confirmed. */
    Alarm acknowledged(String who, Instant now) {
        return new Alarm(
                key, AlarmPhase.ACKNOWLEDGED, since, raisedAt, Optional.of(now), Optional.of(who), clearSince, message);
    }

    /** The same in another phase, no longer hidden. */
    Alarm in(AlarmPhase next) {
        return new Alarm(key, next, since, raisedAt, acknowledgedAt, acknowledgedBy, clearSince, message);
    }

    /** The same, hidden. */
    Alarm hidden(AlarmPhase next, Aside reason) {
        return new Alarm(
                key, next, since, raisedAt, acknowledgedAt, acknowledgedBy, clearSince, message, Optional.of(reason));
    }

    /** The same with what a verdict that holds says. */
    Alarm holding(Verdict verdict) {
        return new Alarm(
                key,
                phase,
                verdict.since(),
                raisedAt,
                acknowledgedAt,
                acknowledgedBy,
                Optional.empty(),
                verdict.message(),
                aside);
    }

    /** The same, with its condition gone since an instant. */
    Alarm gone(Verdict verdict) {
        return new Alarm(
                key,
                phase,
                since,
                raisedAt,
                acknowledgedAt,
                acknowledgedBy,
                Optional.of(verdict.since()),
                verdict.message(),
                aside);
    }

    /** The same, as if it had never been raised. */
    Alarm untold() {
        return new Alarm(
                key, phase, since, Optional.empty(), acknowledgedAt, acknowledgedBy, clearSince, message, aside);
    }
}
