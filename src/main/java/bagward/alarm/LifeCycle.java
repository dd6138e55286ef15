package bagward.alarm;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * The life of one alarm under one rule: its next state from its state, a verdict and the time. Delays run in event time
 * (from {@link Verdict#since}), so the state depends neither on how often it is asked nor on a restart between.
 */
final class LifeCycle {
    private final Rule rule;
    private final Instant now;

    LifeCycle(Rule rule, Instant now) {
        this.rule = rule;
        this.now = now;
    }

    /** The state of an alarm that was normal; empty if it stays so. */
    Optional<Alarm> begin(Verdict verdict) {
        if (verdict.outcome() != Verdict.Outcome.HOLDS) {
            return Optional.empty();
        }
        Alarm pending = Alarm.pending(verdict.key(), verdict.since(), verdict.message());
        return Optional.of(lasted(verdict, rule.onDelay()) ? pending.raised(now) : pending);
    }

    /** The next state; {@link AlarmPhase#NORMAL} if the alarm is over. */
    Alarm next(Alarm alarm, Verdict verdict) {
        return switch (alarm.phase()) {
            case NORMAL, PENDING -> whilePending(alarm, verdict);
            case UNACKNOWLEDGED, ACKNOWLEDGED -> whileStanding(alarm, verdict);
            case RETURNED_UNACKNOWLEDGED -> whileReturned(alarm, verdict);
            case SUPPRESSED -> whileSuppressed(alarm, verdict);
            case SHELVED, OUT_OF_SERVICE -> whileHidden(alarm, verdict);
        };
    }

    /** What becomes of an alarm that comes back into the list. */
    private Alarm back(Alarm alarm, Verdict verdict) {
        return switch (verdict.outcome()) {
            case HOLDS -> begin(verdict).orElse(alarm.in(AlarmPhase.NORMAL));
            case CLEAR -> alarm.in(AlarmPhase.NORMAL);
            case SUPPRESSED -> suppressed(alarm, verdict);
            case COVERED -> covered(alarm, verdict);
            case UNKNOWN -> unheard(alarm);
        };
    }

    private Alarm whilePending(Alarm alarm, Verdict verdict) {
        return switch (verdict.outcome()) {
            case HOLDS -> begin(verdict).orElse(alarm);
            case CLEAR, SUPPRESSED, COVERED -> alarm.in(AlarmPhase.NORMAL);
            case UNKNOWN -> alarm;
        };
    }

    private Alarm whileStanding(Alarm alarm, Verdict verdict) {
        return switch (verdict.outcome()) {
            case HOLDS -> asksAgain(alarm) ? alarm.holding(verdict).raised(now) : alarm.holding(verdict);
            case CLEAR -> lasted(verdict, rule.offDelay()) ? returned(alarm.gone(verdict)) : alarm.gone(verdict);
            case SUPPRESSED -> suppressed(alarm, verdict);
            case COVERED -> covered(alarm, verdict);
            case UNKNOWN -> alarm;
        };
    }

    private Alarm whileReturned(Alarm alarm, Verdict verdict) {
        return switch (verdict.outcome()) {
            case HOLDS ->
                lasted(verdict, rule.onDelay()) ? alarm.holding(verdict).raised(now) : alarm;
            case CLEAR, SUPPRESSED, COVERED, UNKNOWN -> alarm;
        };
    }

    private Alarm whileSuppressed(Alarm alarm, Verdict verdict) {
        return switch (verdict.outcome()) {
            case HOLDS ->
                confirmedInThisSpell(alarm, verdict)
                        ? alarm.holding(verdict).in(AlarmPhase.ACKNOWLEDGED)
                        : begin(verdict).orElse(alarm);
            case CLEAR -> lasted(verdict, rule.offDelay()) ? returned(alarm.gone(verdict)) : alarm.gone(verdict);
            case COVERED -> alarm.acknowledgedAt().isPresent() ? alarm : alarm.untold();
            case SUPPRESSED, UNKNOWN -> alarm;
        };
    }

    /** Hidden by a person: until its time is over nothing moves it. */
    private Alarm whileHidden(Alarm alarm, Verdict verdict) {
        boolean over = alarm.aside()
                .flatMap(Aside::until)
                .filter(until -> !now.isBefore(until))
                .isPresent();
        if (over) {
            return back(alarm, verdict);
        }
        return verdict.outcome() == Verdict.Outcome.HOLDS ? alarm.holding(verdict) : alarm;
    }

    private Alarm suppressed(Alarm alarm, Verdict verdict) {
        return alarm.hidden(
                AlarmPhase.SUPPRESSED, new Aside(AlarmEngine.RULE, now, Optional.empty(), verdict.message()));
    }

    /** Another alarm tells of it from now on: unless somebody saw it, it is as if it had never been raised. */
    private Alarm covered(Alarm alarm, Verdict verdict) {
        Alarm hidden = suppressed(alarm, verdict);
        return alarm.acknowledgedAt().isPresent() ? hidden : hidden.untold();
    }

    /** Nothing is known of it now: what was raised before it was hidden is shown again, the rest forgotten. */
    private Alarm unheard(Alarm alarm) {
        return alarm.raisedAt().isPresent() ? alarm.raised(now) : alarm.in(AlarmPhase.NORMAL);
    }

    private static Alarm returned(Alarm alarm) {
        boolean told = alarm.raisedAt().isPresent() && alarm.acknowledgedAt().isEmpty();
        return alarm.in(told ? AlarmPhase.RETURNED_UNACKNOWLEDGED : AlarmPhase.NORMAL);
    }

    private boolean asksAgain(Alarm alarm) {
        return rule.reAlarm()
                .flatMap(after -> alarm.acknowledgedAt().map(at -> !now.isBefore(at.plus(after))))
                .orElse(false);
    }

    private static boolean confirmedInThisSpell(Alarm alarm, Verdict verdict) {
        return alarm.acknowledgedAt().filter(at -> !verdict.since().isAfter(at)).isPresent();
    }

    private boolean lasted(Verdict verdict, Duration delay) {
        return !now.isBefore(verdict.since().plus(delay));
    }
}
