package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.fault.ImpossibleValueException;
import java.util.List;
import org.junit.jupiter.api.Test;

class BandLimitsTest {
    private static final BandLimits NEVER_HIGH = new BandLimits(0, 1, Double.POSITIVE_INFINITY);

    @Test
    void a_row_without_a_high_band_is_moderate_at_most_however_long_it_is_wet() {
        Organism row = new Organism("alone", "Alternaria", model(), NEVER_HIGH, "test row");
        MouldCourse course = MouldCourse.of(Bags.everyMinute().air(160, 20, 99).build(), List.of(row));
        assertEquals(RiskBand.MODERATE, course.assessment().band());
        assertTrue(course.high().isEmpty());
        assertFalse(
                course.assessment().reason().contains("for a high risk"),
                course.assessment().reason());
    }

    @Test
    void low_and_moderate_must_be_numbers_in_rising_order() {
        assertThrows(ImpossibleValueException.class, () -> new BandLimits(0, Double.POSITIVE_INFINITY, 9));
        assertThrows(ImpossibleValueException.class, () -> new BandLimits(2, 1, Double.POSITIVE_INFINITY));
        assertThrows(ImpossibleValueException.class, () -> new BandLimits(0, 1, Double.NaN));
    }

    @Test
    void rows_of_the_shipped_table_that_need_a_source_which_people_see_call_nobody() {
        List<String> quiet = Seeds.organisms().stream()
                .filter(row -> !row.bands().canBeHigh())
                .map(Organism::id)
                .toList();
        assertEquals(
                List.of(
                        "alternaria-brassicae-spores",
                        "alternaria-brassicicola-spores",
                        "sclerotinia-petals",
                        "white-blister",
                        "damp-hours"),
                quiet);
    }

    private static WetnessInfection model() {
        return new WetnessInfection(3, 20, 30, 4, 15.8, DryBreak.endingFrom(6));
    }
}
