package bagward.bag;

/**
 * Weighted robust regression without intercept of y on two columns, y = b0 x0 + b1 x1, with standard errors from leaving
 * out one block (day) at a time. Huber weights; rows whose weight is 0 or that hold NaN are left out.
 *
 * @param first coefficient of the first column with its standard error
 * @param second coefficient of the second column
 * @param loss weighted mean of the squared residuals, each cut off at three times the scale
 */
record TwoTermFit(Spread first, Spread second, double loss) {
    /** Residuals beyond so many standard deviations count less (Huber). */
    private static final double BEND = 2.5;

    private static final int ROUNDS = 5;

    /** Standard error that one block alone leaves, as a share of what is unlearnt below. */
    private static final double SMALLEST_DETERMINANT = 1e-9;

    /**
     * Fits.
     *
     * @param x0 first column
     * @param x1 second column
     * @param y what is to be explained
     * @param weight weight of each row, 0 to leave it out
     * @param blockLength rows to a block
     */
    static TwoTermFit of(double[] x0, double[] x1, double[] y, double[] weight, int blockLength) {
        int blocks = Math.max(1, (y.length + blockLength - 1) / blockLength);
        double[] coefficients = {0, 0};
        double scale = Double.POSITIVE_INFINITY;
        NormalSums[] sums = new NormalSums[blocks];
        for (int round = 0; round < ROUNDS; round++) {
            NormalSums total = new NormalSums();
            double reach = BEND * scale;
            for (int b = 0; b < blocks; b++) {
                int to = Math.min(y.length, (b + 1) * blockLength);
                sums[b] = NormalSums.over(x0, x1, y, weight, b * blockLength, to, coefficients, reach);
                total.add(sums[b], 1);
            }
            coefficients = total.solve(SMALLEST_DETERMINANT);
            scale = rootMeanSquare(x0, x1, y, weight, coefficients, 3 * scale);
        }
        double[] errors = leaveOneOut(sums, coefficients);
        return new TwoTermFit(
                new Spread(coefficients[0], errors[0]), new Spread(coefficients[1], errors[1]), scale * scale);
    }

    private static double rootMeanSquare(
            double[] x0, double[] x1, double[] y, double[] weight, double[] coefficients, double cut) {
        double sum = 0;
        double all = 0;
        for (int i = 0; i < y.length; i++) {
            double rest = y[i] - coefficients[0] * x0[i] - coefficients[1] * x1[i];
            if (weight[i] > 0 && !Double.isNaN(rest)) {
                double kept = Math.min(Math.abs(rest), cut);
                sum += weight[i] * kept * kept;
                all += weight[i];
            }
        }
        return all > 0 ? Math.sqrt(sum / all) : 0;
    }

    /** Standard errors by the jackknife over blocks that hold anything; unlearnt with fewer than two. */
    private static double[] leaveOneOut(NormalSums[] blocks, double[] coefficients) {
        double[] errors = new double[2];
        for (int column = 0; column < 2; column++) {
            int used = 0;
            double squares = 0;
            for (NormalSums left : blocks) {
                if (left.informs(column)) {
                    NormalSums others = new NormalSums();
                    for (NormalSums block : blocks) {
                        others.add(block, block == left ? 0 : 1);
                    }
                    double moved = others.solve(SMALLEST_DETERMINANT)[column] - coefficients[column];
                    squares += moved * moved;
                    used++;
                }
            }
            errors[column] = used < 2 ? BagLesson.UNLEARNT : Math.sqrt(squares * (used - 1) / used);
        }
        return errors;
    }
}
