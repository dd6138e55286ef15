package bagward.bag;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.util.Arrays;

/** A banded series while it is being filled; unknown cells are NaN. Confined to one method. */
final class BandArrays {
    private final double[] middle;
    private final double[] low;
    private final double[] high;

    BandArrays(int size) {
        middle = unknown(size);
        low = unknown(size);
        high = unknown(size);
    }

    BandArrays(Banded banded) {
        middle = banded.middle().toArray();
        low = banded.low().toArray();
        high = banded.high().toArray();
    }

    private static double[] unknown(int size) {
        double[] values = new double[size];
        Arrays.fill(values, Double.NaN);
        return values;
    }

    void set(int i, double value, double reach) {
        set(i, value, value - reach, value + reach);
    }

    void set(int i, double value, double lowest, double highest) {
        middle[i] = value;
        low[i] = lowest;
        high[i] = highest;
    }

    /** Puts another banded series in from a cell on, in place of all that is there and after it. */
    void put(Banded from, int begin) {
        copy(from.middle(), middle, begin);
        copy(from.low(), low, begin);
        copy(from.high(), high, begin);
    }

    private static void copy(RegularSeries from, double[] into, int begin) {
        double[] values = from.toArray();
        Arrays.fill(into, begin, into.length, Double.NaN);
        System.arraycopy(values, 0, into, begin, Math.min(values.length, into.length - begin));
    }

    /** Keeps all three within limits; NaN stays NaN. */
    BandArrays clamped(double lowest, double highest) {
        for (double[] part : new double[][] {middle, low, high}) {
            for (int i = 0; i < part.length; i++) {
                part[i] = Math.min(highest, Math.max(lowest, part[i]));
            }
        }
        return this;
    }

    Banded banded(TimeGrid grid, Coverage coverage) {
        return new Banded(
                RegularSeries.of(grid, middle), RegularSeries.of(grid, low), RegularSeries.of(grid, high), coverage);
    }
}
