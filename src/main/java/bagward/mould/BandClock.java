package bagward.mould;

import bagward.climate.TimeGrid;
import java.time.Instant;
import java.util.Optional;

/** Notes the cell at whose end each band was first reached; lives only during one pass. */
final class BandClock {
    private static final int NEVER = -1;

    private final BandLimits limits;
    private int low = NEVER;
    private int moderate = NEVER;
    private int high = NEVER;

    BandClock(BandLimits limits) {
        this.limits = limits;
    }

    void note(double score, int endCell) {
        if (low == NEVER && score > limits.low()) {
            low = endCell;
        }
        if (moderate == NEVER && score >= limits.moderate()) {
            moderate = endCell;
        }
        if (high == NEVER && score >= limits.high()) {
            high = endCell;
        }
    }

    /** Whether a score reaches a band that was not reached yet. */
    boolean reaches(double score) {
        return (low == NEVER && score > limits.low())
                || (moderate == NEVER && score >= limits.moderate())
                || (high == NEVER && score >= limits.high());
    }

    /** Whether the highest band was reached. */
    boolean high() {
        return high != NEVER;
    }

    BandTimes times(TimeGrid grid) {
        return new BandTimes(at(grid, low), at(grid, moderate), at(grid, high));
    }

    private static Optional<Instant> at(TimeGrid grid, int endCell) {
        return endCell == NEVER ? Optional.empty() : Optional.of(grid.at(endCell));
    }
}
