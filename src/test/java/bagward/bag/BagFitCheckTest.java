package bagward.bag;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class BagFitCheckTest {
    @Test
    void closure_is_told_as_a_share_even_where_the_errors_of_the_sensors_carry_it_out_of_range() {
        Spread expected = new Spread(0.95, 0.1);

        assertEquals(
                "Closure 1.00 over the last 12 h, expected 0.95 (0.79 to 1.00).",
                BagFitCheck.numbers(1.07, 12, expected));
        assertEquals(
                "Closure 0.00 over the last 2 h, expected 0.95 (0.79 to 1.00).",
                BagFitCheck.numbers(-0.04, 2, expected));
    }
}
