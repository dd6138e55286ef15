package bagward.climate;

import static bagward.climate.WetnessRule.Before.DRY;
import static bagward.climate.WetnessRule.Before.WET;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.WetnessRule.Before;
import bagward.climate.WetnessRule.DewPointDepression;
import bagward.climate.WetnessRule.HumidityLimit;
import bagward.fault.ImpossibleValueException;
import java.time.Duration;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WetnessTest {
    private static final double GAP = Double.NaN;

    @Test
    void dew_point_depression_keeps_its_state_between_the_limits() {
        // depressions of 2.60, 1.87, 2.60 and 3.96 °C (WMO Magnus form, by hand)
        assertStates(DewPointDepression.USUAL, DRY, new double[] {85, 89, 85, 78}, 0, 1, 1, 0);
    }

    @Test
    void humidity_keeps_its_state_between_the_limits() {
        assertStates(HumidityLimit.USUAL, DRY, new double[] {89, 90, 89, 88, 87.9, 89}, 0, 1, 1, 1, 0, 0);
        assertStates(HumidityLimit.USUAL, WET, new double[] {89, 87}, 1, 0);
    }

    @Test
    void a_single_limit_has_no_state() {
        HumidityLimit single = new HumidityLimit(90, 90);
        assertStates(single, Before.UNKNOWN, new double[] {89.9, 90, 89.9}, 0, 1, 0);
    }

    @Test
    void after_a_gap_nothing_is_known_until_a_limit_is_passed() {
        assertStates(HumidityLimit.USUAL, DRY, new double[] {95, GAP, 89, 89, 70, 89}, 1, GAP, GAP, GAP, 0, 0);
        assertStates(HumidityLimit.USUAL, Before.UNKNOWN, new double[] {89, 95}, GAP, 1);
    }

    @Test
    void a_gap_in_temperature_is_a_gap_in_wetness() {
        Wetness wetness = HumidityLimit.USUAL.wetness(Days.cells(5, 20, GAP), Days.cells(5, 95, 95));
        assertTrue(wetness.wetAt(0) && wetness.knownAt(0));
        assertFalse(wetness.wetAt(1) || wetness.knownAt(1));
        TimeAtLeast time = wetness.time(Days.hours(0, 1.0 / 6));
        assertEquals(new TimeAtLeast(Duration.ofMinutes(5), Duration.ofMinutes(5)), time);
    }

    @ParameterizedTest
    @CsvSource({"10, 87.4, 77.3", "20, 88.3, 78.8", "30, 89.1, 80.2"})
    void depression_limits_stand_for_known_humidities(double celsius, double wetFrom, double dryBelow) {
        // humidities at 2.0 and 3.8 °C depression, by hand
        assertEquals(1, DewPointDepression.USUAL.judge(celsius, wetFrom + 0.2));
        assertEquals(-1, DewPointDepression.USUAL.judge(celsius, wetFrom - 0.2));
        assertEquals(-1, DewPointDepression.USUAL.judge(celsius, dryBelow + 0.2));
        assertEquals(0, DewPointDepression.USUAL.judge(celsius, dryBelow - 0.2));
    }

    @Test
    void limits_out_of_order_are_refused() {
        assertThrows(ImpossibleValueException.class, () -> new HumidityLimit(88, 90));
        assertThrows(ImpossibleValueException.class, () -> new DewPointDepression(3.8, 2.0));
        assertThrows(ImpossibleValueException.class, () -> new HumidityLimit(Double.NaN, 90));
    }

    @Test
    void the_wind_tree_can_say_wet_in_wind() {
        assertTrue(WindTree.wet(15, 95, 3));
        assertFalse(WindTree.wet(15, 90, 3));
        assertThrows(ImpossibleValueException.class, () -> WindTree.wet(-1, 95, 3));
        assertThrows(ImpossibleValueException.class, () -> WindTree.wet(15, 95, Double.NaN));
    }

    @ParameterizedTest
    @CsvSource({"10, 77.8", "20, 79.3", "30, 80.6"})
    void in_still_air_the_tree_is_nothing_but_a_humidity_limit(double celsius, double percent) {
        // humidity at a dew-point depression of 3.7 °C, by hand
        assertTrue(WindTree.wet(celsius, percent + 0.2, 0));
        assertFalse(WindTree.wet(celsius, percent - 0.2, 0));
    }

    private static void assertStates(WetnessRule rule, Before before, double[] humidity, double... expected) {
        double[] temperature = new double[humidity.length];
        Arrays.fill(temperature, 20);
        Wetness wetness = rule.wetness(Days.cells(60, temperature), Days.cells(60, humidity), before);
        assertArrayEquals(expected, wetness.states().toArray());
    }
}
