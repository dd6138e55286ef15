package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.fault.ImpossibleValueException;
import bagward.units.SeedMoisture;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class EquilibriumMoistureTest {
    private static final OilShare OIL = new OilShare(0.35, 0.40, 0.45, "test");

    @ParameterizedTest
    @CsvFileSource(resources = "/mould/equilibrium-moisture.csv", numLinesToSkip = 1)
    void moisture_agrees_with_the_table(
            double oilShare, double celsius, double percent, double dryBasis, double tolerance) {
        assertEquals(
                dryBasis, EquilibriumMoisture.of(celsius, percent, oilShare).dryBasisPercent(), tolerance);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void warmer_drier_and_oilier_seed_is_never_moister(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 1000; i++) {
            double celsius = 15 + 10 * random.nextDouble();
            double percent = 10 + 60 * random.nextDouble();
            double oil = 0.6 * random.nextDouble();
            SeedMoisture here = EquilibriumMoisture.of(celsius, percent, oil);
            double warmer = Math.min(25, celsius + random.nextDouble());
            double drier = Math.max(10, percent - random.nextDouble());
            assertTrue(EquilibriumMoisture.of(warmer, drier, oil + 0.05).compareTo(here) < 0);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5})
    void a_range_in_the_range_of_the_equation_holds_its_best_value(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 1000; i++) {
            MoistureRange range =
                    EquilibriumMoisture.range(15 + 10 * random.nextDouble(), 10 + 60 * random.nextDouble(), OIL);
            SeedMoisture middle = range.middle().orElseThrow();
            assertTrue(range.atLeast().orElseThrow().compareTo(middle) < 0);
            assertTrue(range.atMost().orElseThrow().compareTo(middle) > 0);
        }
    }

    @Test
    void outside_its_range_the_equation_gives_no_number() {
        assertThrows(ImpossibleValueException.class, () -> EquilibriumMoisture.of(14.9, 50, 0.4));
        assertThrows(ImpossibleValueException.class, () -> EquilibriumMoisture.of(25.1, 50, 0.4));
        assertThrows(ImpossibleValueException.class, () -> EquilibriumMoisture.of(20, 9.9, 0.4));
        assertThrows(ImpossibleValueException.class, () -> EquilibriumMoisture.of(20, 70.1, 0.4));
    }

    @Test
    void air_beyond_one_edge_gives_a_bound_from_that_edge() {
        // 0.45 oil at 25 °C and 70 %RH: 9.18 % of the dry seed by the equation, so 8.4 % of the moist seed.
        assertEquals("more than 8.4 %", EquilibriumMoisture.range(25, 85, OIL).says());
        assertEquals(
                EquilibriumMoisture.range(25, 70, OIL).atLeast(),
                EquilibriumMoisture.range(25, 85, OIL).atLeast());
        assertEquals(
                EquilibriumMoisture.range(15, 50, OIL).atLeast(),
                EquilibriumMoisture.range(8, 50, OIL).atLeast());
        assertEquals(
                EquilibriumMoisture.range(25, 30, OIL).atMost(),
                EquilibriumMoisture.range(34, 30, OIL).atMost());
        assertEquals(
                EquilibriumMoisture.range(20, 10, OIL).atMost(),
                EquilibriumMoisture.range(20, 4, OIL).atMost());
        assertTrue(EquilibriumMoisture.range(34, 30, OIL).middle().isEmpty());
    }

    @Test
    void air_beyond_two_opposite_edges_says_nothing() {
        assertEquals("not known", EquilibriumMoisture.range(30, 80, OIL).says());
        assertEquals(MoistureRange.UNKNOWN, EquilibriumMoisture.range(10, 5, OIL));
    }

    @Test
    void a_range_is_dry_enough_only_if_all_of_it_is() {
        SeedMoisture eight = new SeedMoisture(8);
        assertEquals(Dryness.DRY_ENOUGH, EquilibriumMoisture.range(20, 40, OIL).against(eight));
        assertEquals(Dryness.PERHAPS, EquilibriumMoisture.range(20, 58, OIL).against(eight));
        assertEquals(Dryness.TOO_DAMP, EquilibriumMoisture.range(20, 69, OIL).against(eight));
        assertEquals(Dryness.TOO_DAMP, EquilibriumMoisture.range(20, 90, OIL).against(eight));
        assertEquals(Dryness.PERHAPS, EquilibriumMoisture.range(10, 40, OIL).against(eight));
    }

    @Test
    void wet_and_dry_basis_are_two_names_of_one_thing() {
        assertEquals(50, SeedMoisture.ofDryBasis(100).percent(), 1e-12);
        assertEquals(8.695652, new SeedMoisture(8).dryBasisPercent(), 1e-6);
        assertEquals(
                7.3,
                SeedMoisture.ofDryBasis(new SeedMoisture(7.3).dryBasisPercent()).percent(),
                1e-12);
    }
}
