package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class GrowthClassTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/mould/growth-isopleths.csv", numLinesToSkip = 1)
    void isopleths_agree_with_the_table(GrowthClass begins, double celsius, double percent, double tolerance) {
        assertEquals(percent, begins.fromPercent(celsius), tolerance);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-2, 5, 12, 20, 30, 38})
    void a_class_begins_at_its_line_and_damper_air_is_never_in_a_lower_one(double celsius) {
        GrowthClass before = GrowthClass.NONE;
        for (double percent = 0; percent <= 100; percent += 0.1) {
            GrowthClass here = GrowthClass.of(celsius, percent);
            assertTrue(here.compareTo(before) >= 0);
            before = here;
        }
        GrowthClass last = GrowthClass.NONE;
        for (GrowthClass next : EnumSet.range(GrowthClass.TRACE, GrowthClass.VERY_FAST)) {
            double from = next.fromPercent(celsius);
            if (from <= 100) {
                assertEquals(next, GrowthClass.of(celsius, from));
                assertEquals(last, GrowthClass.of(celsius, from - 1e-9));
            }
            last = next;
        }
    }

    @Test
    void beyond_the_checked_temperatures_the_line_at_the_edge_counts() {
        assertEquals(GrowthClass.SLOW.fromPercent(5), GrowthClass.SLOW.fromPercent(-3));
        assertEquals(GrowthClass.SLOW.fromPercent(30), GrowthClass.SLOW.fromPercent(36));
    }
}
