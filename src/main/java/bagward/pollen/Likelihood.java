package bagward.pollen;

/**
 * Log likelihood of the proportional-odds model at one point, with its first and second derivatives. Parameters are the
 * coefficients followed by the cut points.
 */
final class Likelihood {
    private final OrdinalData data;
    private final double[] parameters;
    private final int predictorCount;
    private final double[] gradient;
    private final double[][] curvature;
    private double value;

    private Likelihood(OrdinalData data, double[] parameters) {
        this.data = data;
        this.parameters = parameters;
        this.predictorCount = data.predictorCount();
        this.gradient = new double[parameters.length];
        this.curvature = new double[parameters.length][parameters.length];
    }

    static Likelihood at(OrdinalData data, double[] parameters) {
        Likelihood likelihood = new Likelihood(data, parameters);
        for (int row = 0; row < data.rows(); row++) {
            if (data.weight(row) > 0) {
                likelihood.add(row);
            }
        }
        return likelihood;
    }

    /** Log likelihood; −∞ or NaN where cut points do not rise. */
    double value() {
        return value;
    }

    double[] gradient() {
        return gradient;
    }

    /** Minus the second derivatives: positive definite at the maximum. */
    Information information() {
        return new Information(curvature);
    }

    private void add(int row) {
        int level = data.level(row);
        double eta = 0;
        for (int j = 0; j < predictorCount; j++) {
            eta += parameters[j] * data.predictors(row)[j];
        }
        boolean highest = level == data.levels().size() - 1;
        double high = highest ? Double.POSITIVE_INFINITY : parameters[predictorCount + level] - eta;
        double low = level == 0 ? Double.NEGATIVE_INFINITY : parameters[predictorCount + level - 1] - eta;
        double share = Logistic.between(low, high);
        value += data.weight(row) * Math.log(share);
        double[] atHigh = direction(row, highest ? -1 : level);
        double[] atLow = direction(row, level - 1);
        addDerivatives(data.weight(row), share, high, low, atHigh, atLow);
    }

    /** Derivative of (cut point − eta) by the parameters; a cut of −1 is one at infinity, whose weight is 0 anyway. */
    private double[] direction(int row, int cut) {
        double[] direction = new double[parameters.length];
        for (int j = 0; j < predictorCount; j++) {
            direction[j] = -data.predictors(row)[j];
        }
        if (cut >= 0) {
            direction[predictorCount + cut] = 1;
        }
        return direction;
    }

    private void addDerivatives(double weight, double share, double high, double low, double[] atHigh, double[] atLow) {
        double densityHigh = Logistic.density(high) / share;
        double densityLow = Logistic.density(low) / share;
        double slopeHigh = Logistic.densitySlope(high) / share;
        double slopeLow = Logistic.densitySlope(low) / share;
        double[] first = new double[parameters.length];
        for (int i = 0; i < first.length; i++) {
            first[i] = densityHigh * atHigh[i] - densityLow * atLow[i];
            gradient[i] += weight * first[i];
        }
        for (int i = 0; i < first.length; i++) {
            for (int j = 0; j < first.length; j++) {
                double second = slopeHigh * atHigh[i] * atHigh[j] - slopeLow * atLow[i] * atLow[j];
                curvature[i][j] += weight * (first[i] * first[j] - second);
            }
        }
    }
}
