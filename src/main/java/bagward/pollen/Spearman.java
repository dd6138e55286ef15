package bagward.pollen;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.correlation.SpearmansCorrelation;
import org.hipparchus.stat.ranking.NaturalRanking;

/**
 * Spearman rank correlation: Pearson correlation of mid-ranks. Without ties and up to {@value #LARGEST_EXACT} pairs the
 * p-value is exact over all orders, else it is from Student's t.
 */
public final class Spearman {
    /** Most pairs for which all orders are counted. */
    public static final int LARGEST_EXACT = 9;

    private static final int FEWEST = 3;

    private Spearman() {}

    /**
     * Correlates two samples.
     *
     * @param first values, none NaN
     * @param second as many values, pair by pair
     * @throws TooFewDataException below three pairs, or if all values of a sample are equal
     */
    public static RankCorrelation correlate(double[] first, double[] second) {
        if (first.length != second.length || first.length < FEWEST) {
            throw new TooFewDataException("a rank correlation of " + first.length + " and " + second.length
                    + " values is impossible: give at least " + FEWEST + " pairs");
        }
        double rho = coefficient(first, second);
        if (Double.isNaN(rho)) {
            throw new TooFewDataException(
                    "a rank correlation with a value that never changes is impossible: wait for other values");
        }
        boolean exact = first.length <= LARGEST_EXACT && !tied(first) && !tied(second);
        return exact
                ? new RankCorrelation(rho, first.length, exactP(first, second), RankCorrelation.Method.EXACT)
                : new RankCorrelation(rho, first.length, studentP(rho, first.length), RankCorrelation.Method.STUDENT_T);
    }

    /** Coefficient alone, NaN if a sample is constant; for resampling. */
    static double coefficient(double[] first, double[] second) {
        return new SpearmansCorrelation().correlation(first, second);
    }

    private static boolean tied(double[] values) {
        return Arrays.stream(values).distinct().count() < values.length;
    }

    /**
     * Two-sided p-value from Student's t, t = rho √((n − 2)/(1 − rho²)).
     *
     * @param rho coefficient, −1 to 1
     * @param pairs number of pairs, 3 or more
     */
    public static double studentP(double rho, int pairs) {
        if (Math.abs(rho) >= 1) {
            return 0;
        }
        double t = Math.abs(rho) * Math.sqrt((pairs - 2) / (1 - rho * rho));
        return 2 * new TDistribution(pairs - 2).cumulativeProbability(-t);
    }

    private static double exactP(double[] first, double[] second) {
        double[] x = new NaturalRanking().rank(first);
        double[] y = new NaturalRanking().rank(second);
        double observed = 0;
        for (int i = 0; i < x.length; i++) {
            observed += x[i] * y[i];
        }
        Orders orders = new Orders(x, y, observed);
        orders.visit(0, 0, 0);
        double smallerTail = (double) Math.min(orders.atMost, orders.atLeast) / orders.all;
        return Math.min(1, 2 * smallerTail);
    }

    /** Counts, over all orders of the second ranks, how many sums of products lie on either side; sums of ranks are exact. */
    private static final class Orders {
        private final double[] x;
        private final double[] y;
        private final double observed;
        private long all;
        private long atMost;
        private long atLeast;

        Orders(double[] x, double[] y, double observed) {
            this.x = x;
            this.y = y;
            this.observed = observed;
        }

        void visit(int position, int used, double sum) {
            if (position == x.length) {
                all++;
                atMost += sum <= observed ? 1 : 0;
                atLeast += sum >= observed ? 1 : 0;
                return;
            }
            for (int i = 0; i < y.length; i++) {
                if ((used & 1 << i) == 0) {
                    visit(position + 1, used | 1 << i, sum + x[position] * y[i]);
                }
            }
        }
    }
}
