package bagward.bag;

import bagward.climate.RegularSeries;
import java.util.BitSet;

/**
 * A series with an interval for each cell in which the true value lies.
 *
 * @param middle best value
 * @param low lower end of the interval
 * @param high upper end
 * @param coverage how often the interval holds the truth
 */
public record Banded(RegularSeries middle, RegularSeries low, RegularSeries high, Coverage coverage) {
    /** A series with a 90 % interval. */
    public Banded(RegularSeries middle, RegularSeries low, RegularSeries high) {
        this(middle, low, high, Coverage.NINETY);
    }

    /**
     * A quantile of each cell, for who acts on it.
     *
     * @param quantile which one
     * @param measured cells that keep their best value
     */
    RegularSeries at(Quantile quantile, BitSet measured) {
        double reach = quantile.reach(coverage);
        double[] values = middle.toArray();
        for (int i = 0; i < values.length; i++) {
            if (!measured.get(i)) {
                values[i] = quantile.within(low.valueOrNaN(i), values[i], high.valueOrNaN(i), reach);
            }
        }
        return RegularSeries.of(middle.grid(), values);
    }
}
