package bagward.climate;

import bagward.fault.ImpossibleValueException;
import java.time.Duration;
import java.util.List;

/**
 * Readings onto a regular time step.
 *
 * <p>Each reading holds until the next one, or for at most a hold limit: two to three times the interval at which
 * readings are expected. The value of a cell is the mean over the time that readings cover in it, weighted by time, not
 * by number, so a burst of readings counts no more than it lasted. A cell of which less than half is covered is a gap:
 * its value would rest more on the rest of the day than on itself. Light falls and rises within a cell; the mean keeps
 * the sum right.
 *
 * <p>The result does not depend on the order of the readings. Of two readings of one time the higher counts, which is
 * the rule of the store too.
 */
public final class Resampler {
    private Resampler() {}

    /**
     * Time-weighted cell means.
     *
     * @param grid the cells
     * @param readings readings of one series in any order; those before the grid count as far as they hold into it, those
     *     measured at a wrong time not at all
     * @param hold longest time for which a reading stands when no other follows; above 0
     * @return the series, in the unit of the readings, with gaps as gaps
     * @throws ImpossibleValueException if the hold limit is not above 0
     */
    public static RegularSeries onto(TimeGrid grid, List<Reading> readings, Duration hold) {
        return onto(grid, TimedValues.of(readings), hold);
    }

    /** The same for bare values. */
    public static RegularSeries onto(TimeGrid grid, TimedValues values, Duration hold) {
        if (hold.isNegative() || hold.isZero()) {
            throw new ImpossibleValueException("a hold limit of " + hold + " is impossible: give a time above 0");
        }
        Cells cells = new Cells(grid);
        long holdMillis = hold.toMillis();
        int last = values.size() - 1;
        for (int i = 0; i <= last; i++) {
            long from = values.millisAt(i);
            long limit = from + holdMillis;
            cells.add(from, i < last ? Math.min(limit, values.millisAt(i + 1)) : limit, values.valueAt(i));
        }
        return cells.means();
    }

    /** Covered time and time-weighted sum of each cell. */
    private static final class Cells {
        private final TimeGrid grid;
        private final long start;
        private final long width;
        private final long end;
        private final double[] sums;
        private final long[] covered;

        Cells(TimeGrid grid) {
            this.grid = grid;
            start = grid.start().toEpochMilli();
            width = grid.step().toMillis();
            end = start + width * grid.size();
            sums = new double[grid.size()];
            covered = new long[grid.size()];
        }

        /** Lets a value stand from one instant to another, both in ms since 1970. */
        void add(long from, long to, double value) {
            long at = Math.max(from, start);
            long stop = Math.min(to, end);
            while (at < stop) {
                int cell = (int) ((at - start) / width);
                long until = Math.min(stop, start + (cell + 1) * width);
                sums[cell] += value * (until - at);
                covered[cell] += until - at;
                at = until;
            }
        }

        RegularSeries means() {
            double[] means = new double[sums.length];
            for (int i = 0; i < means.length; i++) {
                means[i] = 2 * covered[i] < width ? Double.NaN : sums[i] / covered[i];
            }
            return RegularSeries.of(grid, means);
        }
    }
}
