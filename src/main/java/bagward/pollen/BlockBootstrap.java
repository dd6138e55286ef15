package bagward.pollen;

import java.util.Arrays;
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
        Random random = new Random(seed);
        int block = blockLength(days);
        double[] values = new double[replicates];
        for (int i = 0; i < replicates; i++) {
            values[i] = statistic.applyAsDouble(draw(random, days, block));
        }
        double[] defined =
                Arrays.stream(values).filter(v -> !Double.isNaN(v)).sorted().toArray();
        if (replicates - defined.length > MOST_UNDEFINED * replicates) {
            return Optional.empty();
        }
        double tail = (1 - level) / 2;
        return Optional.of(new Interval(quantile(defined, tail), quantile(defined, 1 - tail), level));
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
