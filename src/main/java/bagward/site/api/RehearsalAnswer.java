package bagward.site.api;

import bagward.board.Rehearsed;
import bagward.board.RehearsedAlarm;
import bagward.watch.rehearsal.RehearsalResult;
import bagward.watch.rehearsal.RehearsalState;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How the newest rehearsal stands, for other programs.
 *
 * @param at time of this answer
 * @param state none, runs, done or ended
 * @param share how much is done, 0 to 1
 * @param bagDays how long bags hung, days of all together; empty until done
 * @param sets what each set of rules would have raised; empty until done
 */
public record RehearsalAnswer(Instant at, String state, double share, Optional<Double> bagDays, List<Tried> sets) {
    /**
     * A set of rules.
     *
     * @param perRule how often each rule would have called
     * @param alarms oldest first
     */
    public record Tried(Map<String, Integer> perRule, List<Raised> alarms) {}

    /**
     * An alarm.
     *
     * @param rule short name of its rule
     * @param subject kind, colon, name
     * @param raised when
     * @param over when it was over; empty if it stood to the end
     * @param message its sentence
     */
    public record Raised(String rule, String subject, Instant raised, Optional<Instant> over, String message) {}

    /** The answer of a state. */
    public static RehearsalAnswer of(RehearsalState state, Instant at) {
        if (state instanceof RehearsalState.Done done) {
            RehearsalResult result = done.result();
            List<Tried> sets =
                    result.sets().stream().map(RehearsalAnswer::tried).toList();
            return new RehearsalAnswer(at, "done", 1, Optional.of(result.bagDays()), sets);
        }
        if (state instanceof RehearsalState.Runs runs) {
            return new RehearsalAnswer(at, "runs", runs.share(), Optional.empty(), List.of());
        }
        String word = state instanceof RehearsalState.Ended ? "ended" : "none";
        return new RehearsalAnswer(at, word, 0, Optional.empty(), List.of());
    }

    private static Tried tried(Rehearsed set) {
        Map<String, Integer> perRule = new TreeMap<>();
        set.rules().forEach(rule -> perRule.put(rule.id().value(), set.times(rule.id())));
        return new Tried(
                perRule, set.alarms().stream().map(RehearsalAnswer::raised).toList());
    }

    private static Raised raised(RehearsedAlarm alarm) {
        return new Raised(
                alarm.key().rule().value(), alarm.key().subject().key(), alarm.raised(), alarm.over(), alarm.message());
    }
}
