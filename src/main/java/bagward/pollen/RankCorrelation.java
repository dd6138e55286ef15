package bagward.pollen;

/**
 * Spearman rank correlation.
 *
 * @param coefficient rho, −1 to 1
 * @param pairs number of pairs
 * @param pValue two-sided p-value of no association
 * @param method how the p-value was found
 */
public record RankCorrelation(double coefficient, int pairs, double pValue, Method method) {
    /** How a p-value was found. */
    public enum Method {
        /** By counting all orders. */
        EXACT,
        /** By Student's t with n − 2 degrees of freedom. */
        STUDENT_T
    }

    /** The sum S of squared rank differences; with ties (n³ − n)(1 − rho)/6, as is usual. */
    public double sumOfSquaredDifferences() {
        double n = pairs;
        return (n * n * n - n) * (1 - coefficient) / 6;
    }
}
