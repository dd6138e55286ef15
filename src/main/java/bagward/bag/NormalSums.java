package bagward.bag;

/** Sums of the normal equations of a two-column regression. Confined to one fit. */
final class NormalSums {
    private double x00;
    private double x01;
    private double x11;
    private double x0y;
    private double x1y;
    private double rows;

    /** Sums over rows [from, to), with Huber weights for residuals beyond a reach. */
    static NormalSums over(
            double[] x0, double[] x1, double[] y, double[] weight, int from, int to, double[] b, double reach) {
        NormalSums sums = new NormalSums();
        for (int i = from; i < to; i++) {
            double rest = Math.abs(y[i] - b[0] * x0[i] - b[1] * x1[i]);
            if (weight[i] > 0 && !Double.isNaN(rest)) {
                double w = rest > reach ? weight[i] * reach / rest : weight[i];
                sums.x00 += w * x0[i] * x0[i];
                sums.x01 += w * x0[i] * x1[i];
                sums.x11 += w * x1[i] * x1[i];
                sums.x0y += w * x0[i] * y[i];
                sums.x1y += w * x1[i] * y[i];
                sums.rows += w;
            }
        }
        return sums;
    }

    void add(NormalSums other, double times) {
        x00 += times * other.x00;
        x01 += times * other.x01;
        x11 += times * other.x11;
        x0y += times * other.x0y;
        x1y += times * other.x1y;
        rows += times * other.rows;
    }

    /** Whether the rows say anything about a column. */
    boolean informs(int column) {
        return (column == 0 ? x00 : x11) > 1e-6;
    }

    /** The two coefficients; 0 for a column that nothing was said about. */
    double[] solve(double smallest) {
        double determinant = x00 * x11 - x01 * x01;
        if (determinant > smallest * x00 * x11) {
            return new double[] {(x11 * x0y - x01 * x1y) / determinant, (x00 * x1y - x01 * x0y) / determinant};
        }
        return new double[] {x00 > 0 ? x0y / x00 : 0, x11 > 0 && x00 <= 0 ? x1y / x11 : 0};
    }
}
