package bagward.pollen;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Scores with predictors and weights; scores are numbered by the levels that occur. */
final class OrdinalData {
    private final List<Integer> levels;
    private final int[] level;
    private final double[][] predictors;
    private final double[] weights;

    /**
     * @param scores one score a row
     * @param predictors one row of predictors a score
     * @param weights one weight a row, 0 or more
     */
    OrdinalData(int[] scores, double[][] predictors, double[] weights) {
        this.levels = IntStream.range(0, scores.length)
                .filter(i -> weights[i] > 0)
                .map(i -> scores[i])
                .sorted()
                .distinct()
                .boxed()
                .toList();
        if (levels.size() < 2) {
            throw new TooFewDataException(
                    "a regression on " + levels.size() + " different scores is impossible: wait for at least two");
        }
        this.level = Arrays.stream(scores).map(levels::indexOf).toArray();
        this.predictors = predictors;
        this.weights = weights;
        for (int predictor = 0; predictor < predictorCount(); predictor++) {
            if (!(range(predictor) > 0)) {
                throw new TooFewDataException(
                        "a regression on a predictor that never changes is impossible: wait for other values");
            }
        }
    }

    List<Integer> levels() {
        return levels;
    }

    int rows() {
        return level.length;
    }

    int level(int row) {
        return level[row];
    }

    double[] predictors(int row) {
        return predictors[row];
    }

    int predictorCount() {
        return predictors[0].length;
    }

    /** Highest minus lowest value of a predictor. */
    double range(int predictor) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double[] row : predictors) {
            low = Math.min(low, row[predictor]);
            high = Math.max(high, row[predictor]);
        }
        return high - low;
    }

    double weight(int row) {
        return weights[row];
    }

    /** Sum of weights at each level. */
    double[] totals() {
        double[] totals = new double[levels.size()];
        for (int i = 0; i < level.length; i++) {
            if (weights[i] > 0) {
                totals[level[i]] += weights[i];
            }
        }
        return totals;
    }

    /** −2 log likelihood without predictors: every level at its own share. */
    double nullDeviance() {
        double[] totals = totals();
        double all = Arrays.stream(totals).sum();
        return -2 * Arrays.stream(totals).map(t -> t * Math.log(t / all)).sum();
    }
}
