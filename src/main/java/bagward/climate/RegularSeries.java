package bagward.climate;

import bagward.fault.ImpossibleValueException;
import java.util.Arrays;

/**
 * Values on a regular time step, with gaps kept as gaps. Immutable. The unit is that of the quantity it was made from
 * or is stated by the method that returns it.
 */
public final class RegularSeries {
    private final TimeGrid grid;
    private final double[] values;

    private RegularSeries(TimeGrid grid, double[] values) {
        this.grid = grid;
        this.values = values;
    }

    /**
     * A series of values on a grid.
     *
     * @param grid the cells
     * @param values one value a cell, NaN for a gap; copied
     * @throws ImpossibleValueException if the number of values is not that of the cells, or one is infinite
     */
    public static RegularSeries of(TimeGrid grid, double[] values) {
        if (values.length != grid.size()) {
            throw new ImpossibleValueException(
                    values.length + " values do not fit a grid of " + grid.size() + " cells: give one a cell");
        }
        for (double value : values) {
            if (Double.isInfinite(value)) {
                throw new ImpossibleValueException("an infinite value in a series is impossible: use NaN for a gap");
            }
        }
        return new RegularSeries(grid, values.clone());
    }

    /** A series of nothing but gaps. */
    public static RegularSeries unknown(TimeGrid grid) {
        double[] values = new double[grid.size()];
        Arrays.fill(values, Double.NaN);
        return new RegularSeries(grid, values);
    }

    /** The cells. */
    public TimeGrid grid() {
        return grid;
    }

    /** Whether cell i has a value. */
    public boolean known(int i) {
        return !Double.isNaN(values[i]);
    }

    /** Value of cell i, NaN for a gap; ask {@link #known} first where a gap matters. */
    public double valueOrNaN(int i) {
        return values[i];
    }

    /** Cells [first, end). */
    public RegularSeries part(int first, int end) {
        TimeGrid cells = new TimeGrid(grid.at(first), grid.step(), end - first);
        return new RegularSeries(cells, Arrays.copyOfRange(values, first, end));
    }

    /** All values, NaN for gaps; a copy. */
    public double[] toArray() {
        return values.clone();
    }
}
