package bagward.climate;

import java.time.Duration;
import java.time.Instant;

/**
 * The cells of a grid that a span touches, from first to last; empty if first is after last.
 *
 * @param first index of the first cell that starts in the span
 * @param last index of the last one
 */
record Cells(int first, int last) {
    /** Cells whose first instant lies in the span, so that spans side by side share no cell. */
    static Cells in(TimeGrid grid, Span span) {
        long step = grid.step().toNanos();
        return new Cells(
                clamp(ceilDiv(nanos(grid, span.from()), step), grid.size()),
                clamp(ceilDiv(nanos(grid, span.to()), step), grid.size()) - 1);
    }

    private static long nanos(TimeGrid grid, Instant instant) {
        return Duration.between(grid.start(), instant).toNanos();
    }

    private static long ceilDiv(long value, long divisor) {
        return -Math.floorDiv(-value, divisor);
    }

    private static int clamp(long index, int size) {
        return (int) Math.max(0, Math.min(size, index));
    }
}
