package bagward.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalsTest {
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void any_number_reads_as_the_format_string_has_it(int places) {
        Random random = new Random(places);
        DoubleStream.generate(() -> random.nextGaussian() * Math.pow(10, random.nextInt(14) - 4))
                .limit(20_000)
                .forEach(value -> assertSame(value, places));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void ties_and_their_neighbours_read_so_too(int places) {
        for (int i = -2_000; i <= 2_000; i++) {
            double tie = (i + 0.5) / Math.pow(10, places);
            assertSame(tie, places);
            assertSame(Math.nextUp(tie), places);
            assertSame(Math.nextDown(tie), places);
            assertSame(i / 20.0, places);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.0, -0.04, 0.05, 999.95, 1e9, 1e300, Double.NaN, Double.POSITIVE_INFINITY})
    void corners_read_so_too(double value) {
        for (int places = 0; places <= 4; places++) {
            assertSame(value, places);
        }
    }

    private static void assertSame(double value, int places) {
        assertEquals(String.format(Locale.ROOT, "%." + places + "f", value), Decimals.fixed(value, places));
    }
}
