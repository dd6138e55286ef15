package bagward.bag;

import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Instant;
import java.util.BitSet;
import java.util.Locale;

/**
 * Tells whether a sensored bag has fallen shut or was blown off, from what it does to the vapour against what it taught
 * before, beside what is believed of its material ({@link Sitting}). A pure function of readings and lessons.
 */
public final class BagFitCheck {
    /** Hours that are told of while the bag sits well, and at most while it does not. */
    private static final int SHORT_LOOK = 3;

    private static final int LONG_LOOK = 12;

    /** Error of the humidity pair that comes and goes within days, %RH. */
    private static final double PAIR_ERROR = 1.5;

    /** Below this lack of saturation in the open bag, %RH, nothing can be told. */
    private static final double LEAST_ROOM = 1;

    private BagFitCheck() {}

    /**
     * Judges a bag at the end of its readings.
     *
     * @param bag readings of bag and house since the sensor hung in it
     * @param material what is believed of its material
     */
    public static BagFit at(SensoredBag bag, MaterialLearning material) {
        TimeGrid grid = bag.house().grid();
        VapourHours hours = VapourHours.of(bag);
        int now = hours.count();
        int each = (int) (3600 / grid.step().toSeconds());
        Instant at = grid.at(now * each);
        if (now < Sitting.FIRST) {
            return unknown(at, "A sensor must hang in a bag for a day before it can tell how the bag sits.");
        }
        Sitting sitting = new Sitting(hours, material.unsensored());
        boolean fits = sitting.verdict() == BagFit.Verdict.FITS;
        int from = fits ? now - SHORT_LOOK : Math.max(sitting.since(), now - LONG_LOOK);
        double room = hours.meanRoom(from, now);
        if (!(room > LEAST_ROOM)) {
            String why = Double.isNaN(room)
                    ? "The sensor in the bag was not heard in the last hours."
                    : "The air is too near saturation to tell.";
            return unknown(at, why);
        }
        double day = hours.meanDay(from, now);
        OwnClosure taught = sitting.taught();
        double doubt = Math.sqrt(taught.variance(day));
        Spread expected = new Spread(taught.at(day), Math.hypot(doubt, PAIR_ERROR / room));
        double closure = hours.closure(from, now, taught.offset());
        String numbers = numbers(closure, now - from, expected);
        return new BagFit(sitting.verdict(), at, grid.at(sitting.since() * each), closure, expected, numbers);
    }

    /** What was found, in words: "Closure 0.98 over the last 2 h, expected 0.56 (0.45 to 0.66).", with the 90 % interval. */
    static String numbers(double closure, int hours, Spread expected) {
        double half = Coverage.NINETY.deviations() * expected.deviation();
        return String.format(
                Locale.ROOT,
                "Closure %.2f over the last %d h, expected %.2f (%.2f to %.2f).",
                share(closure),
                hours,
                share(expected.mean()),
                share(expected.mean() - half),
                share(expected.mean() + half));
    }

    /** Closure as people read it: what lies beyond 0 to 1 is error of the sensors. */
    private static double share(double closure) {
        return Math.max(0, Math.min(1, closure));
    }

    /** The same bag without the readings of hours in which it did not sit well: those would teach what is not so. */
    public static SensoredBag whileItSatWell(SensoredBag bag, BagMaterial material) {
        VapourHours hours = VapourHours.of(bag);
        BitSet well = new Sitting(hours, BagBelief.prior(material)).well();
        if (well.cardinality() == hours.count()) {
            return bag;
        }
        Climate inside = bag.measured();
        int each = (int) (3600 / inside.grid().step().toSeconds());
        Climate kept = new Climate(
                where(inside.temperature(), well, each), where(inside.humidity(), well, each), inside.light());
        return new SensoredBag(bag.house(), kept, bag.pairOffset());
    }

    private static RegularSeries where(RegularSeries series, BitSet hours, int each) {
        double[] values = series.toArray();
        int last = hours.length() == 0 ? 0 : values.length / each - 1;
        for (int i = 0; i < values.length; i++) {
            if (!hours.get(Math.min(i / each, last))) {
                values[i] = Double.NaN;
            }
        }
        return RegularSeries.of(series.grid(), values);
    }

    private static BagFit unknown(Instant at, String because) {
        return new BagFit(BagFit.Verdict.UNKNOWN, at, at, Double.NaN, new Spread(0, 0), because);
    }
}
