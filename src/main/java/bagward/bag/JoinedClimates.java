package bagward.bag;

import bagward.climate.TimeGrid;
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
        BandArrays warm = new BandArrays(size);
        BandArrays damp = new BandArrays(size);
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
                warm.banded(grid, Coverage.NINETY),
                damp.banded(grid, Coverage.NINETY),
                measured,
                new FilmWetness(certain, likely, possible));
    }

    private static void put(BitSet from, BitSet into, int begin, int size) {
        into.clear(begin, size);
        from.stream().map(i -> i + begin).filter(i -> i < size).forEach(into::set);
    }
}
