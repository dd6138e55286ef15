package bagward.watch.rehearsal;

import java.time.Duration;
import java.util.Optional;

/** How the rehearsal stands that was ordered last. */
public sealed interface RehearsalState {
    /** What was ordered last; empty if nothing was. */
    static Optional<RehearsalOrder> order(RehearsalState state) {
        if (state instanceof Runs runs) {
            return Optional.of(runs.order());
        }
        if (state instanceof Done done) {
            return Optional.of(done.order());
        }
        return state instanceof Ended ended ? Optional.of(ended.order()) : Optional.empty();
    }

    /** None was ordered since the start. */
    record None() implements RehearsalState {}

    /**
     * It runs.
     *
     * @param order what is tried
     * @param share how much is done, 0 to 1
     */
    record Runs(RehearsalOrder order, double share) implements RehearsalState {}

    /**
     * It is done.
     *
     * @param order what was tried
     * @param result what came of it
     * @param took how long it took
     */
    record Done(RehearsalOrder order, RehearsalResult result, Duration took) implements RehearsalState {}

    /**
     * It ended without a result.
     *
     * @param order what was to be tried
     * @param why one sentence
     */
    record Ended(RehearsalOrder order, String why) implements RehearsalState {}
}
