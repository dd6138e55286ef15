package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.fault.ImpossibleValueException;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class WetnessInfectionTest {
    private static final DryBreak BREAK = DryBreak.endingFrom(4);

    @ParameterizedTest
    @CsvFileSource(resources = "/mould/wetness-infection.csv", numLinesToSkip = 1)
    void response_and_needed_hours_agree_with_the_table(
            String organism,
            double lowest,
            double best,
            double highest,
            double shortest,
            double longest,
            double celsius,
            double response,
            double responseTolerance,
            double needed,
            double neededTolerance) {
        WetnessInfection model = new WetnessInfection(lowest, best, highest, shortest, longest, BREAK);
        assertEquals(response, model.response(celsius), responseTolerance, organism);
        assertEquals(needed, model.neededHours(celsius), neededTolerance, organism);
    }

    @Test
    void outside_its_temperatures_nothing_infects_however_long_it_is_wet() {
        assertEquals(0, Rows.FLOWERS.score(1000, 0.9));
        assertEquals(0, Rows.FLOWERS.score(1000, 1));
        assertEquals(0, Rows.FLOWERS.score(1000, 34));
        assertEquals(
                "wet 20.0 h at 0 °C, Botrytis infects only between 1 and 34 °C",
                Rows.FLOWERS.reason("Botrytis", 20, 0.2, BandLimits.OF_NEED));
    }

    @Test
    void the_score_is_one_when_the_needed_hours_are_wet() {
        IntStream.rangeClosed(2, 33)
                .forEach(celsius ->
                        assertEquals(1, Rows.FLOWERS.score(Rows.FLOWERS.neededHours(celsius), celsius), 1e-12));
    }

    @Test
    void no_temperature_needs_less_than_the_best_one_or_more_than_the_longest() {
        IntStream.range(11, 340).mapToDouble(i -> i / 10.0).forEach(celsius -> {
            double needed = Rows.FLOWERS.neededHours(celsius);
            assertTrue(needed >= 1 && needed <= 12, () -> celsius + " °C needs " + needed + " h");
        });
    }

    @Test
    void geranium_flowers_fit_the_flower_row() {
        // Sirjusingh & Sutton 1996, Plant Disease 80:160-165 (abstract): no spores after shorter wet times than 8 h at
        // 15 °C, 4 h at 21 and 25 °C; infection must come before spores do.
        assertTrue(Rows.FLOWERS.neededHours(15) < 8);
        assertTrue(Rows.FLOWERS.neededHours(21) < 4);
        assertTrue(Rows.FLOWERS.neededHours(25) < 4);
        assertTrue(Rows.FLOWERS.neededHours(5) > Rows.FLOWERS.neededHours(15) * 4);
    }

    @Test
    void temperatures_out_of_order_are_refused_with_all_three() {
        ImpossibleValueException refused =
                assertThrows(ImpossibleValueException.class, () -> new WetnessInfection(10, 5, 30, 1, 12, BREAK));
        assertTrue(refused.getMessage().contains("10.0, 5.0, 30.0 °C"), refused.getMessage());
        assertThrows(ImpossibleValueException.class, () -> new WetnessInfection(1, 5, 30, Double.NaN, 12, BREAK));
        assertThrows(ImpossibleValueException.class, () -> new WetnessInfection(1, 5, 30, 13, 12, BREAK));
    }
}
