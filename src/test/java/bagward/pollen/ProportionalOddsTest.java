package bagward.pollen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProportionalOddsTest {
    private static final String[] DUMMIES = {
        "infl=Medium", "infl=High", "type=Apartment", "type=Atrium", "type=Terrace", "cont=High"
    };

    private static OrdinalFit housing() {
        List<CSVRecord> rows = Tables.read("housing.csv");
        int[] scores =
                rows.stream().mapToInt(r -> Integer.parseInt(r.get("sat"))).toArray();
        double[] weights = rows.stream()
                .mapToDouble(r -> Double.parseDouble(r.get("freq")))
                .toArray();
        double[][] predictors = rows.stream().map(ProportionalOddsTest::dummies).toArray(double[][]::new);
        return ProportionalOdds.fit(scores, predictors, weights);
    }

    private static double[] dummies(CSVRecord row) {
        double[] dummies = new double[DUMMIES.length];
        for (int i = 0; i < DUMMIES.length; i++) {
            String[] dummy = DUMMIES[i].split("=", -1);
            dummies[i] = row.get(dummy[0]).equals(dummy[1]) ? 1 : 0;
        }
        return dummies;
    }

    @Test
    void the_housing_survey_gives_the_printed_coefficients_and_errors() {
        OrdinalFit fit = housing();
        List<Double> values = new ArrayList<>(fit.coefficients());
        values.addAll(fit.cutPoints());
        List<Double> errors = new ArrayList<>(fit.coefficientErrors());
        errors.addAll(fit.cutPointErrors());
        List<CSVRecord> printed = Tables.read("housing-fit.csv");
        assertEquals(printed.size(), values.size());
        for (int i = 0; i < printed.size(); i++) {
            String term = printed.get(i).get("term");
            assertEquals(number(printed.get(i), "value"), values.get(i), number(printed.get(i), "tolerance"), term);
            assertEquals(
                    number(printed.get(i), "standard error"),
                    errors.get(i),
                    number(printed.get(i), "tolerance of standard error"),
                    term);
        }
    }

    @Test
    void the_housing_survey_gives_the_printed_deviance() {
        // Deviance 3479.149 and AIC 3495.149 as printed in the documentation of MASS polr; null deviance and shares
        // from
        // an independent refit outside this project.
        OrdinalFit fit = housing();
        assertEquals(3479.149, fit.deviance(), 1e-3);
        assertEquals(3495.149, fit.akaike(), 1e-3);
        assertEquals(3648.8776, fit.nullDeviance(), 1e-3);
        assertEquals(1 - .3784, fit.probabilityAtLeast(1, 0, 0, 0, 0, 0, 0), 5e-5);
        assertEquals(.3339, fit.probabilityAtLeast(2, 0, 0, 0, 0, 0, 0), 5e-5);
        assertEquals(1 - .2584, fit.probabilityAtLeast(1, 0, 1, 0, 0, 1, 1), 5e-5);
        assertEquals(.4669, fit.probabilityAtLeast(2, 0, 1, 0, 0, 1, 1), 5e-5);
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void a_known_relation_is_found_again(long seed) {
        ScoreWeather weather = new ScoreWeather(seed, 4000, 0.25);
        OrdinalFit fit = ProportionalOdds.fit(weather.scores(), weather.predictors());
        assertEquals(
                0.25, fit.coefficients().get(0), 4 * fit.coefficientErrors().get(0));
        assertTrue(fit.coefficientErrors().get(0) < 0.02);
        assertTrue(fit.deviance() < fit.nullDeviance());
    }

    @Test
    void the_unit_of_a_predictor_only_scales_its_coefficient() {
        ScoreWeather weather = new ScoreWeather(5, 300, 0.25);
        double[][] inThousandths = new double[300][];
        for (int i = 0; i < 300; i++) {
            inThousandths[i] = new double[] {weather.predictors()[i][0] * 1000};
        }
        OrdinalFit fit = ProportionalOdds.fit(weather.scores(), weather.predictors());
        OrdinalFit scaled = ProportionalOdds.fit(weather.scores(), inThousandths);
        assertEquals(fit.coefficients().get(0), scaled.coefficients().get(0) * 1000, 1e-6);
        assertEquals(fit.coefficientErrors().get(0), scaled.coefficientErrors().get(0) * 1000, 1e-6);
        assertEquals(fit.deviance(), scaled.deviance(), 1e-8);
    }

    @Test
    void weights_count_rows() {
        int[] scores = {0, 1, 1, 2, 0, 2, 2};
        double[][] predictors = {{1}, {2}, {2}, {3}, {2.5}, {1.5}, {1.5}};
        OrdinalFit one = ProportionalOdds.fit(scores, predictors);
        OrdinalFit weighted = ProportionalOdds.fit(
                new int[] {0, 1, 2, 0, 2}, new double[][] {{1}, {2}, {3}, {2.5}, {1.5}}, new double[] {1, 2, 1, 1, 2});
        assertEquals(one.coefficients().get(0), weighted.coefficients().get(0), 1e-9);
        assertEquals(one.deviance(), weighted.deviance(), 1e-9);
    }

    @Test
    void a_score_that_never_occurred_has_no_cut_point_of_its_own() {
        OrdinalFit fit =
                ProportionalOdds.fit(new int[] {0, 0, 3, 3, 0, 3}, new double[][] {{1}, {2}, {2.5}, {4}, {3}, {1.5}});
        assertEquals(List.of(0, 3), fit.levels());
        assertEquals(fit.probabilityAtLeast(3, 2), fit.probabilityAtLeast(1, 2));
        assertEquals(1, fit.probabilityAtLeast(0, 2));
        assertEquals(0, fit.probabilityAtLeast(4, 2));
    }

    @Test
    void what_cannot_be_estimated_is_refused_with_the_reason() {
        assertRefused("different scores", new int[] {2, 2, 2}, new double[][] {{1}, {2}, {3}});
        assertRefused("never changes", new int[] {0, 1, 2}, new double[][] {{5}, {5}, {5}});
        assertRefused("separated", new int[] {0, 0, 1, 1}, new double[][] {{1}, {2}, {3}, {4}});
        assertRefused(
                "beyond the others", new int[] {0, 1, 0, 1, 1}, new double[][] {{1, 2}, {2, 4}, {3, 6}, {1, 2}, {4, 8}
                });
    }

    private static void assertRefused(String reason, int[] scores, double[][] predictors) {
        TooFewDataException refused =
                assertThrows(TooFewDataException.class, () -> ProportionalOdds.fit(scores, predictors));
        assertTrue(refused.getMessage().contains(reason), refused::getMessage);
    }

    /** Days whose light lingers from day to day and whose scores follow a known relation. */
    @SuppressWarnings("ArrayRecordComponent")
    record ScoreWeather(int[] scores, double[][] predictors) {
        ScoreWeather(long seed, int days, double slope) {
            this(new int[days], new double[days][1]);
            Random random = new Random(seed);
            double mood = 0;
            for (int day = 0; day < days; day++) {
                mood = 0.5 * mood + random.nextGaussian();
                double light = 10 + 4 * mood;
                double uniform = random.nextDouble();
                double latent = slope * (light - 10) + Math.log(uniform / (1 - uniform));
                predictors[day][0] = light;
                scores[day] = latent < -1.5 ? 0 : latent < 0 ? 1 : latent < 1.5 ? 2 : 3;
            }
        }
    }
}
