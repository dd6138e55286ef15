package bagward.alarm;

import java.time.Instant;
import java.util.Optional;

/**
 * A figure of the system against a limit, which is exceeded by more. What the figure was before is not kept, so since when
 * it is beyond the limit is known from the alarm that it has.
 */
final class Level {
    private final Rule rule;
    private final AlarmKey key;
    private final Optional<Alarm> before;
    private final Instant now;

    /** @param before the alarms so far */
    Level(Rule rule, Subject subject, AlarmBook before, Instant now) {
        this.rule = rule;
        this.key = new AlarmKey(rule.id(), subject);
        this.before = before.find(key);
        this.now = now;
    }

    /** Holds from the limit on, and then until the figure falls below the limit by the deadband. */
    Verdict atLeast(double value, String message) {
        return verdict(value >= rule.limit() - (held() ? rule.deadband() : 0), value, message);
    }

    /** Holds from the limit down, and then until the figure rises above the limit by the deadband. */
    Verdict atMost(double value, String message) {
        return verdict(value <= rule.limit() + (held() ? rule.deadband() : 0), value, message);
    }

    private Verdict verdict(boolean holds, double value, String message) {
        if (holds) {
            Instant since = held() ? before.map(Alarm::since).orElse(now) : now;
            return new Verdict(key, Verdict.Outcome.HOLDS, since, value, message);
        }
        return new Verdict(
                key, Verdict.Outcome.CLEAR, before.flatMap(Alarm::clearSince).orElse(now), value, message);
    }

    private boolean held() {
        return before.filter(alarm -> alarm.clearSince().isEmpty()).isPresent();
    }
}
