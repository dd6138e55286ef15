package bagward.pollen;

import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/** Observed information, factored with its diagonal scaled to 1 so that units of the predictors do not matter. */
final class Information {
    private static final double ASYMMETRY = 1e-6;
    private static final double SINGULAR = 1e-10;

    private final double[] scales;
    private final DecompositionSolver solver;

    /**
     * @param matrix minus the second derivatives of the log likelihood
     * @throws TooFewDataException if it is singular
     */
    Information(double[][] matrix) {
        int size = matrix.length;
        scales = new double[size];
        for (int i = 0; i < size; i++) {
            scales[i] = Math.sqrt(matrix[i][i]);
        }
        RealMatrix scaled = MatrixUtils.createRealMatrix(size, size);
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                scaled.setEntry(i, j, matrix[i][j] / (scales[i] * scales[j]));
            }
        }
        try {
            solver = new CholeskyDecomposition(scaled, ASYMMETRY, SINGULAR).getSolver();
        } catch (MathRuntimeException e) {
            throw new TooFewDataException(
                    "a regression on a predictor that says nothing beyond the others is impossible: leave it out");
        }
    }

    /** The Newton step for a gradient. */
    double[] step(double[] gradient) {
        double[] scaled = new double[scales.length];
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = gradient[i] / scales[i];
        }
        double[] step = solver.solve(new ArrayRealVector(scaled)).toArray();
        for (int i = 0; i < step.length; i++) {
            step[i] /= scales[i];
        }
        return step;
    }

    /** Standard errors of the parameters. */
    double[] errors() {
        RealMatrix inverse = solver.getInverse();
        double[] errors = new double[scales.length];
        for (int i = 0; i < errors.length; i++) {
            errors[i] = Math.sqrt(inverse.getEntry(i, i)) / scales[i];
        }
        return errors;
    }
}
