package bagward.pollen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BlockBootstrapTest {
    @Test
    void the_same_seed_gives_the_same_interval() {
        double[] values = new Random(3).doubles(40).toArray();
        assertEquals(mean(values, 1), mean(values, 1));
        assertNotEquals(mean(values, 1), mean(values, 2));
    }

    @Test
    void the_interval_of_a_mean_is_as_wide_as_theory_says() {
        double[] values = new Random(4).doubles(400).toArray();
        Interval interval = mean(values, 9).orElseThrow();
        double theory = 2 * 1.96 * Math.sqrt(1.0 / 12 / 400);
        assertEquals(theory, interval.high() - interval.low(), theory * 0.15);
        assertTrue(interval.holds(Arrays.stream(values).average().orElseThrow()));
    }

    @Test
    void runs_of_like_days_widen_the_interval() {
        double[] values = new double[400];
        Random random = new Random(5);
        double mood = 0;
        for (int i = 0; i < values.length; i++) {
            mood = 0.8 * mood + random.nextGaussian();
            values[i] = mood;
        }
        double deviation =
                Math.sqrt(Arrays.stream(values).map(v -> v * v).average().orElseThrow());
        Interval interval = mean(values, 9).orElseThrow();
        double asIfApart = 2 * 1.96 * deviation / Math.sqrt(400);
        assertTrue(interval.high() - interval.low() > 1.5 * asIfApart);
    }

    @Test
    void a_statistic_that_is_mostly_undefined_has_no_interval() {
        assertTrue(BlockBootstrap.usual(1)
                .interval(10, drawn -> drawn[0] < 5 ? Double.NaN : 1)
                .isEmpty());
    }

    @Test
    void blocks_are_runs_of_neighbouring_days() {
        BlockBootstrap.usual(1).interval(30, drawn -> {
            int block = BlockBootstrap.blockLength(30);
            for (int i = 0; i < drawn.length; i++) {
                assertTrue(i % block == 0 || drawn[i] == (drawn[i - 1] + 1) % 30);
            }
            return 0;
        });
    }

    private static Optional<Interval> mean(double[] values, long seed) {
        return BlockBootstrap.usual(seed)
                .interval(
                        values.length,
                        drawn -> Arrays.stream(drawn)
                                .mapToDouble(i -> values[i])
                                .average()
                                .orElse(Double.NaN));
    }
}
