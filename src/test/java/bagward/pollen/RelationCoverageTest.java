package bagward.pollen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A small part of the study in {@link RelationCoverage}, whose main method does the whole. */
class RelationCoverageTest {
    @ParameterizedTest
    @CsvSource({"0.3, 0", "0.8, 0", "0.8, 0.5"})
    void intervals_of_95_percent_hold_the_truth_in_90_to_98_percent_of_seasons_of_40_days(
            double slope, double lingering) {
        RelationCoverage found = RelationCoverage.study(120, 149, 40, slope, lingering);
        assertEquals(0, found.refused());
        assertEquals(0.94, found.slope(), 0.04, found::toString);
        assertEquals(0.94, found.chance(), 0.04, found::toString);
        assertEquals(0.94, found.rank(), 0.06, found::toString);
    }
}
