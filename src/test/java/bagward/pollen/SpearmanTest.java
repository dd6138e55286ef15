package bagward.pollen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpearmanTest {
    private static final double[] TUNA_LIGHTNESS = {44.4, 45.9, 41.9, 53.3, 44.7, 44.1, 50.7, 45.2, 60.1};
    private static final double[] TUNA_QUALITY = {2.6, 3.1, 2.5, 5.0, 3.6, 4.0, 5.2, 2.8, 3.8};

    @Test
    void tuna_without_ties_has_the_exact_p_value() {
        // Data: Hollander & Wolfe 1973, p. 185, as in the manual of R's cor.test; p-values by counting all 9! orders
        // outside this project.
        RankCorrelation tuna = Spearman.correlate(TUNA_LIGHTNESS, TUNA_QUALITY);
        assertEquals(RankCorrelation.Method.EXACT, tuna.method());
        assertEquals(0.6, tuna.coefficient(), 1e-12);
        assertEquals(48, tuna.sumOfSquaredDifferences(), 1e-9);
        assertEquals(0.09679784, tuna.pValue(), 1e-8);
        assertEquals(0.08762283, Spearman.studentP(0.6, 9), 1e-8);
    }

    @Test
    void ties_share_their_ranks() {
        // Sullivan, Essentials of Biostatistics, example 15.6: printed rho 0.9277782, S 6.0666, p 0.0008915.
        RankCorrelation tied = Spearman.correlate(
                new double[] {100, 102, 103, 101, 105, 100, 99, 105},
                new double[] {257, 264, 274, 266, 277, 263, 258, 275});
        assertEquals(RankCorrelation.Method.STUDENT_T, tied.method());
        assertEquals(0.92777818, tied.coefficient(), 1e-8);
        assertEquals(6.0666326, tied.sumOfSquaredDifferences(), 1e-6);
        assertEquals(0.000891495, tied.pValue(), 1e-9);
    }

    @Test
    void a_perfect_order_of_four_has_the_p_value_of_one_order_in_twenty_four() {
        RankCorrelation up = Spearman.correlate(new double[] {1, 2, 3, 4}, new double[] {10, 20, 30, 45});
        assertEquals(1, up.coefficient(), 1e-12);
        assertEquals(2.0 / 24, up.pValue(), 1e-12);
        RankCorrelation down = Spearman.correlate(new double[] {1, 2, 3, 4}, new double[] {9, 8, 7, 6});
        assertEquals(-1, down.coefficient(), 1e-12);
        assertEquals(2.0 / 24, down.pValue(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void the_order_of_the_days_does_not_matter(long seed) {
        Random random = new Random(seed);
        double[] x = random.doubles(8).toArray();
        double[] y = random.doubles(8).toArray();
        RankCorrelation before = Spearman.correlate(x, y);
        for (int i = 7; i > 0; i--) {
            int other = random.nextInt(i + 1);
            swap(x, i, other);
            swap(y, i, other);
        }
        RankCorrelation after = Spearman.correlate(x, y);
        assertEquals(before.pValue(), after.pValue(), 1e-12);
        assertEquals(before.coefficient(), after.coefficient(), 1e-12);
    }

    @Test
    void too_few_pairs_and_constant_values_are_refused() {
        assertThrows(TooFewDataException.class, () -> Spearman.correlate(new double[] {1, 2}, new double[] {1, 2}));
        assertThrows(TooFewDataException.class, () -> Spearman.correlate(new double[] {1, 2, 3}, new double[] {1, 2}));
        assertThrows(
                TooFewDataException.class, () -> Spearman.correlate(new double[] {1, 2, 3}, new double[] {4, 4, 4}));
    }

    private static void swap(double[] values, int a, int b) {
        double kept = values[a];
        values[a] = values[b];
        values[b] = kept;
    }
}
