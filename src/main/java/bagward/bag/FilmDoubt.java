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
        double middle = dewPointHumidity(balance, night * cooling.mean());
        double reach = Coverage.EIGHTY.deviations() * cooling.deviation();
        double most = dewPointHumidity(balance, night * (cooling.mean() + reach));
        double least = dewPointHumidity(balance, night * Math.max(0, cooling.mean() - reach));
        double margin = percent - middle;
        mark(possible, i, wet || margin >= 0 || within(-margin, NARROWER * above, middle - most));
        mark(certain, i, wet && margin >= 0 && !within(margin, NARROWER * below, least - middle));
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

    /** Humidity at which a film that is colder than the air of the bag is at dew point, %RH. */
    private static double dewPointHumidity(BagBalance balance, double colder) {
        return 100 * MoistAir.saturationKilopascals(balance.temperature() - colder) / balance.saturation();
    }

    FilmWetness wetness() {
        return new FilmWetness(certain, likely, possible);
    }
}
