package bagward.bag;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** The climates of bags that followed one another on a head, as one: what the head went through. */
public final class JoinedClimates {
    private JoinedClimates() {}

    /**
     * Joins climates in their order; each stands from its first cell until the next one begins. Time between is unknown.
     *
     * @param parts at least one, oldest first, on aligned grids of one step
     */
    public static BagClimate of(List<BagClimate> parts) {
        if (parts.size() == 1) {
            return parts.get(0);
        }
        TimeGrid first = parts.get(0).grid();
        TimeGrid last = parts.get(parts.size() - 1).grid();
        int size = first.indexOf(last.start()) + last.size();
        TimeGrid grid = new TimeGrid(first.start(), first.step(), size);
        Parts warm = new Parts(size);
        Parts damp = new Parts(size);
        BitSet measured = new BitSet(size);
        BitSet certain = new BitSet(size);
        BitSet likely = new BitSet(size);
        BitSet possible = new BitSet(size);
        for (BagClimate part : parts) {
            int begin = grid.indexOf(part.grid().start());
            warm.put(part.temperature(), begin);
            damp.put(part.humidity(), begin);
            put(part.measured(), measured, begin, size);
            put(part.film().certain(), certain, begin, size);
            put(part.film().likely(), likely, begin, size);
            put(part.film().possible(), possible, begin, size);
        }
        return new BagClimate(
                warm.banded(grid), damp.banded(grid), measured, new FilmWetness(certain, likely, possible));
    }

    private static void put(BitSet from, BitSet into, int begin, int size) {
        into.clear(begin, size);
        from.stream().map(i -> i + begin).filter(i -> i < size).forEach(into::set);
    }

    private static final class Parts {
        private final double[] middle;
        private final double[] low;
        private final double[] high;

        Parts(int size) {
            middle = unknown(size);
            low = unknown(size);
            high = unknown(size);
        }

        private static double[] unknown(int size) {
            double[] values = new double[size];
            Arrays.fill(values, Double.NaN);
            return values;
        }

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

        Banded banded(TimeGrid grid) {
            return new Banded(
                    RegularSeries.of(grid, middle), RegularSeries.of(grid, low), RegularSeries.of(grid, high));
        }
    }
}
