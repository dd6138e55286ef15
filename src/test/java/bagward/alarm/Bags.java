package bagward.alarm;

import bagward.bag.BagClimate;
import bagward.bag.Banded;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.util.BitSet;

/** Bag climates written out by hand. */
final class Bags {
    private Bags() {}

    static TimeGrid grid(Instant start, int minutes) {
        return new TimeGrid(start, Duration.ofMinutes(1), minutes);
    }

    /** A bag that is estimated throughout, at one temperature, with a band of 3 %RH to both sides. */
    static BagClimate humid(Instant start, double... percent) {
        TimeGrid grid = grid(start, percent.length);
        return new BagClimate(
                banded(grid, constant(percent.length, 14), 1), banded(grid, percent, 3), new BitSet(), new BitSet());
    }

    /** A bag that is measured throughout, at one humidity. */
    static BagClimate warm(Instant start, double... degrees) {
        TimeGrid grid = grid(start, degrees.length);
        BitSet measured = new BitSet();
        measured.set(0, degrees.length);
        return new BagClimate(
                banded(grid, degrees, 0.5), banded(grid, constant(degrees.length, 60), 3), measured, new BitSet());
    }

    /** So many equal values. */
    static double[] constant(int size, double value) {
        double[] values = new double[size];
        java.util.Arrays.fill(values, value);
        return values;
    }

    private static Banded banded(TimeGrid grid, double[] middle, double half) {
        double[] low = middle.clone();
        double[] high = middle.clone();
        for (int i = 0; i < middle.length; i++) {
            low[i] -= half;
            high[i] += half;
        }
        return new Banded(RegularSeries.of(grid, middle), RegularSeries.of(grid, low), RegularSeries.of(grid, high));
    }
}
