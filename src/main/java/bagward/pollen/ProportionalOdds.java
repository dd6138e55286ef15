package bagward.pollen;

import java.util.Arrays;
import java.util.List;

/**
 * Proportional-odds (ordered logistic) regression by Newton's method. The log likelihood is concave, so a step that is
 * halved until it rises finds the one maximum; standard errors are from the observed information there.
 */
public final class ProportionalOdds {
    private static final int MOST_STEPS = 60;
    private static final int MOST_HALVINGS = 40;
    private static final double CLOSE = 1e-12;
    /** A log-odds range this wide over the data means that the scores are separated and no finite fit exists. */
    private static final double SEPARATED = 60;

    private ProportionalOdds() {}

    /**
     * Fits scores to predictors.
     *
     * @param scores one score a row; any whole numbers, only their order counts
     * @param predictors one row of finite predictors a score
     * @throws TooFewDataException if fewer than two scores occur, a predictor never changes, or a predictor separates
     *     the scores perfectly
     */
    public static OrdinalFit fit(int[] scores, double[][] predictors) {
        double[] weights = new double[scores.length];
        Arrays.fill(weights, 1);
        return fit(scores, predictors, weights);
    }

    /**
     * Fits weighted scores to predictors.
     *
     * @param scores one score a row
     * @param predictors one row of finite predictors a score
     * @param weights one weight a row, 0 or more: how often the row was seen
     * @throws TooFewDataException as above
     */
    public static OrdinalFit fit(int[] scores, double[][] predictors, double[] weights) {
        OrdinalData data = new OrdinalData(scores, predictors, weights);
        double[] parameters = start(data);
        Likelihood here = Likelihood.at(data, parameters);
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] direction = here.information().step(here.gradient());
            double gain = dot(direction, here.gradient());
            if (gain < CLOSE) {
                return result(data, parameters, here);
            }
            parameters = climb(data, here, parameters, direction);
            here = Likelihood.at(data, parameters);
            refuseSeparated(data, parameters);
        }
        throw separated();
    }

    /** Coefficients at 0 and cut points at the log odds of the shares. */
    private static double[] start(OrdinalData data) {
        double[] totals = data.totals();
        double all = Arrays.stream(totals).sum();
        double[] parameters = new double[data.predictorCount() + totals.length - 1];
        double below = 0;
        for (int cut = 0; cut < totals.length - 1; cut++) {
            below += totals[cut];
            parameters[data.predictorCount() + cut] = Math.log(below / (all - below));
        }
        return parameters;
    }

    private static double[] climb(OrdinalData data, Likelihood here, double[] parameters, double[] direction) {
        double length = 1;
        for (int i = 0; i < MOST_HALVINGS; i++) {
            double[] next = parameters.clone();
            for (int j = 0; j < next.length; j++) {
                next[j] += length * direction[j];
            }
            if (Likelihood.at(data, next).value() >= here.value()) {
                return next;
            }
            length /= 2;
        }
        return parameters;
    }

    private static void refuseSeparated(OrdinalData data, double[] parameters) {
        for (int j = 0; j < data.predictorCount(); j++) {
            if (Math.abs(parameters[j]) * data.range(j) > SEPARATED) {
                throw separated();
            }
        }
    }

    private static TooFewDataException separated() {
        return new TooFewDataException(
                "the scores are perfectly separated by the predictor, so its effect has no finite estimate: wait for more days");
    }

    private static OrdinalFit result(OrdinalData data, double[] parameters, Likelihood here) {
        double[] errors = here.information().errors();
        int predictors = data.predictorCount();
        return new OrdinalFit(
                data.levels(),
                part(parameters, 0, predictors),
                part(parameters, predictors, parameters.length),
                part(errors, 0, predictors),
                part(errors, predictors, errors.length),
                -2 * here.value(),
                data.nullDeviance());
    }

    private static List<Double> part(double[] values, int from, int to) {
        return Arrays.stream(values, from, to).boxed().toList();
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
