package bagward.bag;

/** Small systems of linear equations with a positive definite matrix, by Cholesky. */
final class PositiveSystem {
    private PositiveSystem() {}

    /** The inverse of a, which is left as it is. */
    static double[][] inverse(double[][] a) {
        double[][] factor = new double[a.length][];
        for (int i = 0; i < a.length; i++) {
            factor[i] = a[i].clone();
        }
        factor(factor);
        double[][] inverse = new double[a.length][];
        for (int i = 0; i < a.length; i++) {
            double[] unit = new double[a.length];
            unit[i] = 1;
            inverse[i] = solveFactored(factor, unit);
        }
        return inverse;
    }

    /** Solves a x = b; a is overwritten by its factor. */
    static double[] solve(double[][] a, double[] b) {
        factor(a);
        return solveFactored(a, b);
    }

    /** Overwrites a by its factor; only the lower half is looked at. */
    static void factor(double[][] a) {
        for (int i = 0; i < a.length; i++) {
            double[] row = a[i];
            for (int k = 0; k <= i; k++) {
                double[] other = a[k];
                double sum = row[k];
                for (int j = 0; j < k; j++) {
                    sum -= row[j] * other[j];
                }
                row[k] = i == k ? Math.sqrt(sum) : sum / other[k];
            }
        }
    }

    /** Solves a x = b, of which a was overwritten by its factor. */
    static double[] solveFactored(double[][] a, double[] b) {
        int size = b.length;
        double[] x = b.clone();
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < i; j++) {
                x[i] -= a[i][j] * x[j];
            }
            x[i] /= a[i][i];
        }
        for (int i = size - 1; i >= 0; i--) {
            for (int j = i + 1; j < size; j++) {
                x[i] -= a[j][i] * x[j];
            }
            x[i] /= a[i][i];
        }
        return x;
    }
}
