package bagward.bag;

import bagward.climate.MoistAir;
import java.util.BitSet;

/**
 * Whether the film of an estimated bag is wet, cell by cell, with the doubt about its humidity and about the cooling of
 * the film. The film is wet where the humidity of the bag reaches that at which a film so much colder is at dew point,
 * 100 es(T − c) / es(T). Confined to one estimate.
 */
final class FilmDoubt {
    /** Below this share of saturation no film is wet, whatever its cooling and whatever the doubt. */
    private static final double SURELY_DRY = 70;

    /** From a 90 % interval to an 80 % one; the lower end of a 90 % one would call no film wet, as near saturation as it may be. */
    static final double NARROWER = Coverage.EIGHTY.deviations() / Coverage.NINETY.deviations();

    private final Spread cooling;
    private final BitSet certain = new BitSet();
    private final BitSet likely = new BitSet();
    private final BitSet possible = new BitSet();

    FilmDoubt(Spread cooling) {
        this.cooling = cooling;
    }

    /**
     * Takes a cell.
     *
     * @param balance as it stands after the cell
     * @param night share of night, 0 to 1: how much of the cooling is there
     * @param below how far the humidity may lie below its best value, 90 % interval, %RH
     * @param above how far above
     */
    void cell(int i, BagBalance balance, double night, double below, double above) {
        double percent = Math.max(balance.humidity(), balance.drivenHumidity());
        boolean wet = balance.filmWet();
        mark(likely, i, wet);
        if (percent + above < SURELY_DRY) {
            return;
        }
        double middle = 100 * balance.filmSaturation() / balance.saturation();
        double margin = percent - middle;
        if (wet || margin >= 0) {
            possible.set(i);
        } else {
            mark(possible, i, within(-margin, NARROWER * above, middle - dewPointHumidity(balance, night, 1)));
        }
        if (wet && margin >= 0) {
            mark(certain, i, !within(margin, NARROWER * below, dewPointHumidity(balance, night, -1) - middle));
        }
    }

    /** Each cell comes once, and clearing one that was never set is dear in a bit set. */
    private static void mark(BitSet set, int i, boolean value) {
        if (value) {
            set.set(i);
        }
    }

    /** Whether a distance lies within two doubts that are independent of each other. */
    private static boolean within(double distance, double doubt, double other) {
        return distance * distance <= doubt * doubt + other * other;
    }

    /**
     * Humidity at which the film is at dew point, %RH.
     *
     * @param side 1 for the end of the 80 % interval at which it is colder, −1 for the other
     */
    private double dewPointHumidity(BagBalance balance, double night, int side) {
        double reach = Coverage.EIGHTY.deviations() * cooling.deviation();
        double colder = night * Math.max(0, cooling.mean() + side * reach);
        return 100 * MoistAir.saturationKilopascals(balance.temperature() - colder) / balance.saturation();
    }

    FilmWetness wetness() {
        return new FilmWetness(certain, likely, possible);
    }
}
