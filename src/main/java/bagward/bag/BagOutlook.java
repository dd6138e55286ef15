package bagward.bag;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.util.BitSet;

/**
 * What is to be expected in a bag until the next morning, in hourly steps, made from the outlook of its house.
 *
 * @param issuedAt the full hour it was made for; nothing measured later is in it
 * @param climate temperature and humidity in the bag with 80 % intervals that hold both the doubt about the house and that
 *     about the bag, all estimated; certain and possible water on the film hold the doubt about the bag alone
 * @param wet hours with 95 %RH or more
 */
public record BagOutlook(Instant issuedAt, BagClimate climate, WetHours wet) {
    private static final int SO_FAR = Integer.MIN_VALUE;

    /**
     * What was so far, followed by this outlook on the same step.
     *
     * @param soFar climate in the same bag up to now, on a step that divides an hour
     * @return its cells, then each hour of the outlook repeated; cells that have begun stay as they are
     */
    public BagClimate after(BagClimate soFar) {
        TimeGrid before = soFar.grid();
        TimeGrid hours = climate.grid();
        long seconds = Math.max(0, Duration.between(before.end(), hours.end()).toSeconds());
        int more = (int) (seconds / before.step().toSeconds());
        TimeGrid all = new TimeGrid(before.start(), before.step(), before.size() + more);
        int[] from = new int[all.size()];
        for (int i = 0; i < from.length; i++) {
            from[i] = i < before.size() ? SO_FAR : hours.indexOf(all.at(i));
        }
        return new BagClimate(
                joined(all, from, soFar.temperature(), climate.temperature()),
                joined(all, from, soFar.humidity(), climate.humidity()),
                soFar.measured(),
                new FilmWetness(
                        joined(from, soFar.film().certain(), climate.film().certain()),
                        joined(from, soFar.film().likely(), climate.film().likely()),
                        joined(from, soFar.film().possible(), climate.film().possible())));
    }

    private static Banded joined(TimeGrid all, int[] from, Banded before, Banded outlook) {
        return new Banded(
                joined(all, from, before.middle(), outlook.middle()),
                joined(all, from, before.low(), outlook.low()),
                joined(all, from, before.high(), outlook.high()));
    }

    private static RegularSeries joined(TimeGrid all, int[] from, RegularSeries before, RegularSeries outlook) {
        double[] values = new double[from.length];
        for (int i = 0; i < from.length; i++) {
            boolean known = from[i] >= 0 && from[i] < outlook.grid().size();
            values[i] = from[i] == SO_FAR ? before.valueOrNaN(i) : known ? outlook.valueOrNaN(from[i]) : Double.NaN;
        }
        return RegularSeries.of(all, values);
    }

    private static BitSet joined(int[] from, BitSet before, BitSet outlook) {
        BitSet joined = (BitSet) before.clone();
        for (int i = 0; i < from.length; i++) {
            if (from[i] >= 0 && outlook.get(from[i])) {
                joined.set(i);
            }
        }
        return joined;
    }
}
