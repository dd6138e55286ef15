package bagward.bag;

/**
 * What a bag taught of itself up to an hour, beside what is believed of its material: how much vapour it holds back by day
 * and by night, how far its sensor and that of the house lie apart, how sure that is, and how restless it was.
 */
final class OwnClosure {
    /** Coefficients: closure by day, by night, offset. */
    static final int SIZE = 3;

    private final double[] values;
    private final double[][] covariance;
    private final double restlessness;

    /**
     * @param values the coefficients
     * @param covariance of them
     * @param restlessness variance of its hours about what is expected, as a multiple of the usual one
     */
    OwnClosure(double[] values, double[][] covariance, double restlessness) {
        this.values = values;
        this.covariance = covariance;
        this.restlessness = restlessness;
    }

    /** Closure at a share of day, 0 to 1. */
    double at(double day) {
        return Math.max(0, Math.min(1, values[1] + (values[0] - values[1]) * day));
    }

    /** How much more the sensor in the bag reads than that of the house in the same air, %RH. */
    double offset() {
        return values[2];
    }

    /** Variance of its hours as a multiple of the usual one. */
    double restlessness() {
        return restlessness;
    }

    /** Variance of the closure at a share of day. */
    double variance(double day) {
        double[] row = {day, 1 - day, 0};
        return covariance(row, row);
    }

    /** Covariance of what is expected to be read in two hours with such a day and room, %RH squared. */
    double covariance(double day, double room, double otherDay, double otherRoom) {
        return covariance(row(day, room), row(otherDay, otherRoom));
    }

    private double covariance(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < SIZE; i++) {
            for (int k = 0; k < SIZE; k++) {
                sum += one[i] * covariance[i][k] * other[k];
            }
        }
        return sum;
    }

    /** What each coefficient adds in an hour: day is a share, room in %RH. */
    static double[] row(double day, double room) {
        return new double[] {day * room, (1 - day) * room, 1};
    }
}
