package bagward.bag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.fault.ImpossibleValueException;
import java.time.Duration;
import java.time.Instant;
import java.util.BitSet;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantileTest {
    private static final TimeGrid GRID = new TimeGrid(Instant.parse("2026-02-03T00:00:00Z"), Duration.ofMinutes(1), 3);

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.1, 0.3, 0.5, 0.8, 0.9, 0.95})
    void so_large_a_share_of_what_may_be_lies_below_it(double share) {
        Random random = new Random(7);
        Quantile quantile = new Quantile(share);
        int below = 0;
        int draws = 20_000;
        for (int i = 0; i < draws; i++) {
            double truth = 80 + 4 * random.nextGaussian();
            double reach = 4 * Coverage.NINETY.deviations();
            below += truth < quantile.within(80 - reach, 80, 80 + reach, Coverage.NINETY) ? 1 : 0;
        }
        assertEquals(share, below / (double) draws, 0.01);
    }

    @ParameterizedTest
    @EnumSource(Coverage.class)
    void it_grows_with_its_share_and_does_not_depend_on_how_wide_an_interval_was_told(Coverage coverage) {
        double before = Double.NEGATIVE_INFINITY;
        for (int percent = 5; percent <= 95; percent++) {
            Quantile quantile = new Quantile(percent / 100.0);
            double at = quantile.within(80 - 3 * coverage.deviations(), 80, 80 + 2 * coverage.deviations(), coverage);
            assertTrue(at > before, "at " + percent);
            before = at;
        }
        assertEquals(80 + 2 * 1.2816, at(Quantile.POSSIBLE, coverage), 0.001);
        assertEquals(80 - 3 * 1.2816, at(Quantile.SURE, coverage), 0.001);
    }

    private static double at(Quantile quantile, Coverage coverage) {
        return quantile.within(80 - 3 * coverage.deviations(), 80, 80 + 2 * coverage.deviations(), coverage);
    }

    @Test
    void it_is_read_as_a_word_or_a_number_and_nothing_else() {
        assertEquals(Quantile.MIDDLE, Quantile.read("middle"));
        assertEquals(Quantile.SURE, Quantile.read("0.1"));
        assertEquals(new Quantile(0.75), Quantile.read("0.75"));
        for (String nonsense : new String[] {"0.04", "0.96", "NaN", "high"}) {
            assertEquals(
                    "must be sure, middle, possible, or a number from 0.05 to 0.95",
                    assertThrows(ImpossibleValueException.class, () -> Quantile.read(nonsense))
                            .getMessage());
        }
    }

    @Test
    void measured_cells_and_gaps_stay_as_they_are_and_the_film_follows_its_level() {
        BagClimate climate = new BagClimate(
                banded(20, 21, Double.NaN),
                banded(90, 88, Double.NaN),
                bits(1),
                new FilmWetness(bits(), bits(0), bits(0, 1)));

        BagClimate upper = climate.at(Quantile.POSSIBLE);

        assertEquals(90 + 5 * 1.2816 / 1.645, upper.humidity().middle().valueOrNaN(0), 0.001);
        assertEquals(88, upper.humidity().middle().valueOrNaN(1));
        assertEquals(21, upper.temperature().middle().valueOrNaN(1));
        assertTrue(!upper.humidity().middle().known(2));
        assertEquals(bits(0), upper.film().likely(), "a measured cell is wet only if that is likely");
        assertEquals(bits(), climate.at(Quantile.SURE).film().likely());
        assertEquals(climate, climate.at(Quantile.MIDDLE));
    }

    private static Banded banded(double... middle) {
        double[] low = middle.clone();
        double[] high = middle.clone();
        for (int i = 0; i < middle.length; i++) {
            low[i] -= 5;
            high[i] += 5;
        }
        return new Banded(RegularSeries.of(GRID, middle), RegularSeries.of(GRID, low), RegularSeries.of(GRID, high));
    }

    private static BitSet bits(int... set) {
        BitSet bits = new BitSet();
        for (int i : set) {
            bits.set(i);
        }
        return bits;
    }
}
