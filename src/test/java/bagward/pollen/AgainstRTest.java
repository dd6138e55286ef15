package bagward.pollen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The same statistics from R on random scores; tolerances: coefficients 1e-5, standard errors 5e-4, deviance 1e-3. */
class AgainstRTest {
    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource({"1, 20, 0.8", "2, 40, 0.3", "3, 40, 1.5", "4, 250, -0.6"})
    void correlation_and_regression_agree_with_r(long seed, int days, double slope)
            throws IOException, InterruptedException {
        Random random = new Random(seed);
        double[] x = new double[days];
        int[] scores = new int[days];
        double[] weights = new double[days];
        for (int i = 0; i < days; i++) {
            x[i] = Math.round((3 + 1.5 * random.nextGaussian()) * 10) / 10.0;
            double uniform = random.nextDouble();
            double latent = slope * (x[i] - 3) + Math.log(uniform / (1 - uniform));
            scores[i] = latent < -1.2 ? 0 : latent < 0 ? 1 : latent < 1.8 ? 2 : 3;
            weights[i] = random.nextInt(3) == 0 ? 0.5 : 1;
        }
        compare(StatisticsOfR.ask(folder, x, scores, weights), x, scores, weights);
    }

    private static void compare(ToDoubleFunction<String> r, double[] x, int[] scores, double[] weights) {
        RankCorrelation rank =
                Spearman.correlate(x, Arrays.stream(scores).asDoubleStream().toArray());
        assertEquals(r.applyAsDouble("rho"), rank.coefficient(), 1e-9);
        assertEquals(r.applyAsDouble("p"), rank.pValue(), 1e-9);
        double[][] predictors = Arrays.stream(x).mapToObj(v -> new double[] {v}).toArray(double[][]::new);
        OrdinalFit fit = ProportionalOdds.fit(scores, predictors, weights);
        assertEquals(r.applyAsDouble("slope"), fit.coefficients().get(0), 1e-5);
        assertEquals(r.applyAsDouble("slope error"), fit.coefficientErrors().get(0), 5e-4);
        for (int cut = 0; cut < fit.cutPoints().size(); cut++) {
            assertEquals(r.applyAsDouble("cut " + (cut + 1)), fit.cutPoints().get(cut), 1e-5);
            assertEquals(
                    r.applyAsDouble("cut error " + (cut + 1)),
                    fit.cutPointErrors().get(cut),
                    5e-4);
        }
        assertEquals(r.applyAsDouble("deviance"), fit.deviance(), 1e-3);
    }
}
