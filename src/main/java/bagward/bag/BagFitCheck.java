package bagward.bag;

import bagward.climate.Climate;
import bagward.climate.MoistAir;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Tells whether a sensored bag has fallen shut or was blown off, from the closure over the last hours against what the
 * bag itself taught before, or its material while it taught nothing yet. A pure function of readings and lessons.
 *
 * <p>It calls seldom and late rather than wrongly: of 240 simulated bags of other physics that fell shut it found 116 within
 * 6 h, with 2 false calls in 240 bag-weeks of others. A bag that was nearly shut before, or a night near saturation,
 * leaves nothing to see.
 */
public final class BagFitCheck {
    /** Hours that are judged together. */
    private static final Duration WINDOW = Duration.ofHours(3);

    /** What a bag taught is taken from before this time, so that a bag that falls shut does not teach that it is. */
    private static final Duration APART = Duration.ofHours(8);

    /** Error of the humidity pair that comes and goes within days, %RH. */
    private static final double PAIR_ERROR = 1.5;

    /** Share of the window that must be heard. */
    private static final double HEARD = 0.5;

    /** Below this lack of saturation in the open bag, %RH, the closure cannot be told. */
    private static final double LEAST_DRYNESS = 3;

    /** How far windows of a bag that fits stray from what it taught, and for how many windows that counts. Priors. */
    private static final double STRAYING = 0.07;

    private static final double PRIOR_WINDOWS = 6;

    /** So many deviations from what is expected are no accident. */
    private static final double DEVIATIONS = 3.5;

    /** A smaller change of closure is never called. */
    private static final double LEAST_CHANGE = 0.12;

    /** A bag that was blown off has less closure than this, or a quarter of what it had. */
    private static final double OPEN = 0.1;

    private BagFitCheck() {}

    /**
     * Judges a bag at the end of its readings.
     *
     * @param bag readings of bag and house since it was put on, up to now
     * @param material what is believed of its material
     */
    public static BagFit at(SensoredBag bag, MaterialLearning material) {
        return at(bag, material, bag.house().grid().size());
    }

    /** Judges a bag at the end of cell end − 1. */
    static BagFit at(SensoredBag bag, MaterialLearning material, int end) {
        TimeGrid grid = bag.house().grid();
        int step = (int) grid.step().toSeconds();
        Window window = Window.over(bag, Math.max(0, end - (int) (WINDOW.toSeconds() / step)), end);
        Instant at = grid.at(end);
        if (window.heard() < HEARD * WINDOW.toSeconds() / step) {
            return unknown(at, "The sensor in the bag was not heard enough in the last 3 h.");
        }
        int before = Math.max(0, end - (int) (APART.toSeconds() / step));
        if (!(window.dryness() > LEAST_DRYNESS)) {
            return unknown(at, "The air is too near saturation to tell.");
        }
        Optional<BagLesson> own = BagLearning.lesson(until(bag, before));
        Spread expected = own.map(lesson -> ownCourse(bag, before, material.sensored(lesson), window))
                .orElseGet(() -> expected(material.unsensored(), window));
        return judge(at, window, expected);
    }

    private static BagFit judge(Instant at, Window window, Spread expected) {
        double change = window.closure() - expected.mean();
        double beyond = Math.max(LEAST_CHANGE, DEVIATIONS * expected.deviation());
        String numbers = String.format(
                Locale.ROOT,
                "Closure %.2f over the last 3 h, expected %.2f within %.2f.",
                window.closure(),
                expected.mean(),
                beyond);
        BagFit.Verdict verdict = BagFit.Verdict.FITS;
        if (change > beyond) {
            verdict = BagFit.Verdict.SHUT;
        } else if (change < -beyond && window.closure() < Math.max(OPEN, expected.mean() / 4)) {
            verdict = BagFit.Verdict.OFF;
        }
        return new BagFit(verdict, at, window.closure(), expected, numbers);
    }

    private static Spread expected(BagBelief belief, Window window) {
        double day = window.day();
        Spread byDay = belief.closureByDay();
        Spread byNight = belief.closureByNight();
        double mean = byNight.mean() + (byDay.mean() - byNight.mean()) * day;
        double doubt = byNight.deviation() + (byDay.deviation() - byNight.deviation()) * day;
        return new Spread(mean, Math.hypot(doubt, PAIR_ERROR / Math.max(1, window.dryness())));
    }

    /** What the bag did at such hours before; the doubt is how far its own windows strayed from what it taught. */
    private static Spread ownCourse(SensoredBag bag, int before, BagBelief belief, Window now) {
        int hour = (int) (3600 / bag.house().grid().step().toSeconds());
        int length = (int) (WINDOW.toHours() * hour);
        double squares = PRIOR_WINDOWS * STRAYING * STRAYING;
        double windows = PRIOR_WINDOWS;
        for (int end = length; end <= before; end += hour) {
            Window past = Window.over(bag, end - length, end);
            if (past.heard() > length * HEARD && past.dryness() > LEAST_DRYNESS) {
                double stray = past.closure() - level(belief, past);
                double noise = PAIR_ERROR / past.dryness();
                squares += Math.max(0, stray * stray - noise * noise);
                windows++;
            }
        }
        return new Spread(level(belief, now), Math.hypot(Math.sqrt(squares / windows), PAIR_ERROR / now.dryness()));
    }

    private static double level(BagBelief belief, Window window) {
        double night = belief.closureByNight().mean();
        return night + (belief.closureByDay().mean() - night) * window.day();
    }

    private static BagFit unknown(Instant at, String because) {
        return new BagFit(BagFit.Verdict.UNKNOWN, at, Double.NaN, new Spread(0, 0), because);
    }

    private static SensoredBag until(SensoredBag bag, int end) {
        SensorOffset pair = bag.pairOffset();
        SensorOffset certain = new SensorOffset(
                new Spread(pair.temperature().mean(), 0),
                new Spread(pair.humidity().mean(), 0));
        return new SensoredBag(first(bag.house(), end), first(bag.measured(), end), certain);
    }

    private static Climate first(Climate climate, int end) {
        TimeGrid grid = new TimeGrid(climate.grid().start(), climate.grid().step(), end);
        return new Climate(
                first(climate.temperature(), grid), first(climate.humidity(), grid), first(climate.light(), grid));
    }

    private static RegularSeries first(RegularSeries series, TimeGrid grid) {
        return RegularSeries.of(grid, Arrays.copyOf(series.toArray(), grid.size()));
    }

    /**
     * The cells that are judged.
     *
     * @param heard how many are known
     * @param closure least-squares closure
     * @param dryness root mean square of what the open bag would lack to saturation, %RH
     * @param day mean share of day
     */
    private record Window(int heard, double closure, double dryness, double day) {
        static Window over(SensoredBag bag, int from, int to) {
            Climate house = bag.house();
            Climate inside = bag.measured();
            SensorOffset pair = bag.pairOffset();
            double rooms = 0;
            double shares = 0;
            double days = 0;
            int heard = 0;
            for (int i = from; i < to; i++) {
                double temperature =
                        inside.temperature().valueOrNaN(i) - pair.temperature().mean();
                double humidity =
                        inside.humidity().valueOrNaN(i) - pair.humidity().mean();
                double vapour = MoistAir.vapourKilopascals(
                        house.temperature().valueOrNaN(i), house.humidity().valueOrNaN(i));
                double open = 100 * vapour / MoistAir.saturationKilopascals(temperature);
                double day = Daylight.share(Daylight.global(house.light().valueOrNaN(i)));
                if (!Double.isNaN(open + humidity + day)) {
                    rooms += (100 - open) * (100 - open);
                    shares += (100 - open) * (humidity - open);
                    days += day;
                    heard++;
                }
            }
            return new Window(heard, shares / rooms, heard > 0 ? Math.sqrt(rooms / heard) : 0, days / heard);
        }
    }
}
