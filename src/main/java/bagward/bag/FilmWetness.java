package bagward.bag;

import java.util.BitSet;

/**
 * Cells with water on the film of a bag: how sure. A certain cell is likely, and a likely one possible.
 *
 * @param certain wet even if what is in doubt lies at the dry end of its 80 % interval: right in nine of ten cells
 * @param likely wet by the best values
 * @param possible wet if it lies at the wet end
 */
public record FilmWetness(BitSet certain, BitSet likely, BitSet possible) {
    /** Copies the sets. */
    public FilmWetness {
        certain = (BitSet) certain.clone();
        likely = (BitSet) likely.clone();
        possible = (BitSet) possible.clone();
    }

    /** The same cells at every level, for a film about which there is no doubt. */
    public static FilmWetness sure(BitSet wet) {
        return new FilmWetness(wet, wet, wet);
    }

    @Override
    public BitSet certain() {
        return (BitSet) certain.clone();
    }

    @Override
    public BitSet likely() {
        return (BitSet) likely.clone();
    }

    @Override
    public BitSet possible() {
        return (BitSet) possible.clone();
    }

    /** Whether water is there for sure in cell i. */
    public boolean certainAt(int i) {
        return certain.get(i);
    }

    /** Whether water is likely in cell i. */
    public boolean likelyAt(int i) {
        return likely.get(i);
    }

    /** Whether water is possible in cell i. */
    public boolean possibleAt(int i) {
        return possible.get(i);
    }

    /** How many cells of [from, to) are certainly, likely and possibly wet. */
    public int[] cells(int from, int to) {
        return new int[] {
            certain.get(from, to).cardinality(),
            likely.get(from, to).cardinality(),
            possible.get(from, to).cardinality()
        };
    }
}
