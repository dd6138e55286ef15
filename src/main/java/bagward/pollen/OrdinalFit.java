package bagward.pollen;

import java.util.List;

/**
 * A fitted proportional-odds regression: log odds of a score of at most k are its cut point minus eta, where eta is the
 * sum of coefficients times predictors. A positive coefficient means higher scores.
 *
 * @param levels scores that occur, rising
 * @param coefficients one for each predictor, per unit of the predictor
 * @param cutPoints one between each two neighbouring levels, rising
 * @param coefficientErrors standard errors of the coefficients
 * @param cutPointErrors standard errors of the cut points
 * @param deviance −2 log likelihood
 * @param nullDeviance the same without predictors
 */
public record OrdinalFit(
        List<Integer> levels,
        List<Double> coefficients,
        List<Double> cutPoints,
        List<Double> coefficientErrors,
        List<Double> cutPointErrors,
        double deviance,
        double nullDeviance) {
    /** Copies the lists. */
    public OrdinalFit {
        levels = List.copyOf(levels);
        coefficients = List.copyOf(coefficients);
        cutPoints = List.copyOf(cutPoints);
        coefficientErrors = List.copyOf(coefficientErrors);
        cutPointErrors = List.copyOf(cutPointErrors);
    }

    /** Akaike's criterion: deviance plus twice the number of parameters. */
    public double akaike() {
        return deviance + 2 * (coefficients.size() + cutPoints.size());
    }

    /**
     * Probability of a score of at least a level.
     *
     * @param level the level; need not have occurred
     * @param predictors in the order of the coefficients
     * @return 0 to 1; 1 if no lower score ever occurred, 0 if none as high did
     */
    public double probabilityAtLeast(int level, double... predictors) {
        return Logistic.share(logOddsAtLeast(level, predictors));
    }

    /** Log odds of the same; infinite where the probability is 0 or 1 for want of such scores. */
    double logOddsAtLeast(int level, double... predictors) {
        int below = (int) levels.stream().filter(l -> l < level).count();
        if (below == 0) {
            return Double.POSITIVE_INFINITY;
        }
        return below == levels.size() ? Double.NEGATIVE_INFINITY : eta(predictors) - cutPoints.get(below - 1);
    }

    private double eta(double... predictors) {
        double eta = 0;
        for (int i = 0; i < coefficients.size(); i++) {
            eta += coefficients.get(i) * predictors[i];
        }
        return eta;
    }
}
