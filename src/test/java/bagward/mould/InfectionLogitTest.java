package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class InfectionLogitTest {
    private static final InfectionLogit MODEL = new InfectionLogit();

    @ParameterizedTest
    @CsvFileSource(resources = "/mould/infection-logit.csv", numLinesToSkip = 1)
    void logit_probability_and_band_agree_with_the_table(
            double hours, double celsius, double logit, double probability, double tolerance, RiskBand band) {
        assertEquals(logit, InfectionLogit.logit(hours, celsius), tolerance);
        assertEquals(probability, InfectionLogit.probability(hours, celsius), tolerance);
        assertEquals(band, MODEL.usualBands().bandOf(MODEL.score(hours, celsius)));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/mould/infection-logit-hours.csv", numLinesToSkip = 1)
    void hours_to_each_band_agree_with_the_table(
            double celsius, double toLow, double toModerate, double toHigh, double tolerance) {
        assertEquals(toLow, InfectionLogit.hoursTo(0, celsius), tolerance);
        assertEquals(toModerate, InfectionLogit.hoursTo(0.5, celsius), tolerance);
        assertEquals(toHigh, InfectionLogit.hoursTo(1, celsius), tolerance);
    }

    @Test
    void high_can_be_reached_because_the_bands_are_on_the_logit() {
        assertEquals(RiskBand.HIGH, MODEL.usualBands().bandOf(MODEL.score(20, 20)));
        assertTrue(InfectionLogit.probability(20, 20) < 1, "a band from 1 on would be out of reach on the probability");
    }

    @ParameterizedTest
    @CsvSource({"15, 17.56", "19.5, 13.80", "20, 13.85"})
    void hours_to_high_agree_with_an_independent_parabola_within_an_hour(double celsius, double parabolaHours) {
        // I = 84.37 - 7.238 T + 0.1856 T², in public use for wet hours needed by Botrytis; its source was not read.
        assertEquals(parabolaHours, 84.37 - 7.238 * celsius + 0.1856 * celsius * celsius, 0.01);
        assertEquals(parabolaHours, InfectionLogit.hoursTo(1, celsius), 1);
    }

    @Test
    void where_wet_hours_gain_nothing_it_says_so() {
        assertEquals(Double.POSITIVE_INFINITY, InfectionLogit.hoursTo(1, 5));
        assertEquals(
                "wet 30.0 h at 5 °C, Botrytis does not gain at this temperature (outside what the model was fitted on)",
                MODEL.reason("Botrytis", 30, 5, MODEL.usualBands()));
        assertEquals(
                "wet 12.0 h at 20 °C, Botrytis needs 14.4 h", MODEL.reason("Botrytis", 12, 20, MODEL.usualBands()));
    }
}
