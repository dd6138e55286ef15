package bagward.bag;

/** Small systems of linear equations with a positive definite matrix, by Cholesky. */
final class PositiveSystem {
    private PositiveSystem() {}

    /** The inverse of a, which is left as it is. */
    static double[][] inverse(double[][] a) {
        double[][] inverse = new double[a.length][];
        for (int i = 0; i < a.length; i++) {
            double[][] copy = new double[a.length][];
            for (int k = 0; k < a.length; k++) {
                copy[k] = a[k].clone();
            }
            double[] unit = new double[a.length];
            unit[i] = 1;
            inverse[i] = solve(copy, unit);
        }
        return inverse;
    }

    /** Solves a x = b; a is overwritten by its factor. */
    static double[] solve(double[][] a, double[] b) {
        int size = b.length;
        for (int i = 0; i < size; i++) {
            for (int k = 0; k <= i; k++) {
                double sum = a[i][k];
                for (int j = 0; j < k; j++) {
                    sum -= a[i][j] * a[k][j];
                }
                a[i][k] = i == k ? Math.sqrt(sum) : sum / a[k][k];
            }
        }
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
