package bagward.climate;

import bagward.fault.ImpossibleValueException;
import java.time.Duration;
import java.time.Instant;

/**
 * A regular time step: cell i covers [start + i·step, start + (i+1)·step).
 *
 * @param start first instant of cell 0
 * @param step length of a cell, whole seconds, at least one
 * @param size number of cells, 0 or more
 */
public record TimeGrid(Instant start, Duration step, int size) {
    /** Refuses a step of less than a second or with fractions of one. */
    public TimeGrid {
        if (step.toSeconds() < 1 || !step.equals(Duration.ofSeconds(step.toSeconds()))) {
            throw new ImpossibleValueException(
                    "time step " + step + " is impossible: allowed are whole seconds from 1");
        }
        if (size < 0) {
            throw new ImpossibleValueException("a time grid of " + size + " cells is impossible: allowed is 0 or more");
        }
    }

    /**
     * The grid of whole steps since 1970 that covers [from, to): the first cell holds {@code from}, and the last one
     * holds the last instant before {@code to}. Aligned grids of one step always share their cell limits.
     */
    public static TimeGrid covering(Instant from, Instant to, Duration step) {
        long width = step.toSeconds();
        long first = Math.floorDiv(from.getEpochSecond(), width);
        long endSecond = to.getNano() == 0 ? to.getEpochSecond() : to.getEpochSecond() + 1;
        long afterLast = Math.floorDiv(endSecond + width - 1, width);
        int cells = Math.toIntExact(Math.max(0, afterLast - first));
        return new TimeGrid(Instant.ofEpochSecond(first * width), step, cells);
    }

    /** First instant of cell i. */
    public Instant at(int i) {
        return start.plusSeconds(i * step.toSeconds());
    }

    /** First instant after the last cell. */
    public Instant end() {
        return at(size);
    }

    /** The cell that holds an instant; below 0 or from size on if it lies outside. */
    public int indexOf(Instant instant) {
        long seconds = Duration.between(start, instant).toSeconds();
        return Math.toIntExact(Math.floorDiv(seconds, step.toSeconds()));
    }
}
