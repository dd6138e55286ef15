package bagward.pollen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToDoubleFunction;

/**
 * Intervals by resampling whole runs of days, since neighbouring days are alike (circular block bootstrap, percentile
 * interval). The same seed gives the same interval.
 *
 * @param replicates how many resamples, 100 or more
 * @param level nominal level, 0 to 1
 * @param seed seed of the random numbers
 */
public record BlockBootstrap(int replicates, double level, long seed) {
    /** More undefined resamples than this share, and there is no interval. */
    private static final double MOST_UNDEFINED = 0.2;

    /** 95 % from 999 resamples. */
    public static BlockBootstrap usual(long seed) {
        return new BlockBootstrap(999, 0.95, seed);
    }

    /** The usual length of a run: the cube root of the number of days, rounded up. */
    public static int blockLength(int days) {
        return (int) Math.ceil(Math.cbrt(days));
    }

    /**
     * An interval for a statistic of days in their order.
     *
     * @param days number of days
     * @param statistic takes the drawn day numbers, 0 to days − 1, some more than once; NaN where it is undefined
     * @return empty if the statistic is undefined for more than a fifth of the resamples
     */
    public Optional<Interval> interval(int days, ToDoubleFunction<int[]> statistic) {
        return interval(samples(days).stream().mapToDouble(statistic).toArray());
    }

    /** The resamples themselves: drawn day numbers, 0 to days − 1, in runs of neighbouring days. */
    public List<int[]> samples(int days) {
        Random random = new Random(seed);
        int block = blockLength(days);
        List<int[]> samples = new ArrayList<>(replicates);
        for (int i = 0; i < replicates; i++) {
            samples.add(draw(random, days, block));
        }
        return samples;
    }

    /**
     * The percentile interval of one value for each resample.
     *
     * @param values NaN where undefined
     * @return empty if more than a fifth are undefined
     */
    public Optional<Interval> interval(double... values) {
        double[] defined =
                Arrays.stream(values).filter(v -> !Double.isNaN(v)).sorted().toArray();
        if (values.length - defined.length > MOST_UNDEFINED * values.length) {
            return Optional.empty();
        }
        double tail = (1 - level) / 2;
        return Optional.of(new Interval(quantile(defined, tail), quantile(defined, 1 - tail), level));
    }

    /**
     * The interval of an estimate: half the width of the percentile interval to either side. With few days the percentile
     * interval itself lies off its estimate and holds the truth too seldom: of regressions on 40 days 82 to 90 % instead
     * of 95 %, where this one reached 91 to 98 % ({@code RelationCoverage} among the tests).
     *
     * @param estimate from all days, on a scale without limits such as log odds
     * @param values the same for each resample, NaN where undefined
     * @return empty if more than a fifth are undefined
     */
    public Optional<Interval> around(double estimate, double... values) {
        return interval(values).map(found -> {
            double half = (found.high() - found.low()) / 2;
            return new Interval(estimate - half, estimate + half, level);
        });
    }

    private static int[] draw(Random random, int days, int block) {
        int[] drawn = new int[days];
        int first = 0;
        for (int i = 0; i < days; i++) {
            if (i % block == 0) {
                first = random.nextInt(days);
            }
            drawn[i] = (first + i % block) % days;
        }
        return drawn;
    }

    /** Linear between order statistics. */
    private static double quantile(double[] sorted, double share) {
        double position = share * (sorted.length - 1);
        int below = (int) position;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (position - below) * (sorted[above] - sorted[below]);
    }
}
