package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against Humpherson-Jones & Phelps 1989, Ann appl Biol 114 (abstract): sporulation of Alternaria on Brassica. */
class HumidHoursTest {
    private static RiskBand band(String id, Bags bags) {
        Organism organism = Seeds.organisms().stream()
                .filter(o -> o.id().equals(id))
                .findFirst()
                .orElseThrow();
        return MouldRisk.assess(bags.build(), List.of(organism)).band();
    }

    @ParameterizedTest
    @CsvSource({"2, MODERATE", "2.9, MODERATE", "3, LOW", "4, LOW"})
    void a_break_of_two_hours_in_sixteen_has_no_effect_and_one_of_three_inhibits(double dryHours, RiskBand band) {
        Bags bags = Bags.everyMinute().air(8, 20, 97).air(dryHours, 20, 75).air(8, 20, 97);
        assertEquals(band, band("alternaria-brassicae-spores", bags));
    }

    @Test
    void each_wet_period_between_long_dry_ones_sporulates() {
        Bags bags = Bags.everyMinute().air(18, 20, 97).air(6, 20, 60).air(18, 20, 97);
        assertEquals(RiskBand.MODERATE, band("alternaria-brassicae-spores", bags));
    }

    @ParameterizedTest
    @CsvSource({
        "alternaria-brassicae-spores, 91.4, NONE",
        "alternaria-brassicae-spores, 91.5, MODERATE",
        "alternaria-brassicicola-spores, 86.9, NONE",
        "alternaria-brassicicola-spores, 87, MODERATE"
    })
    void spores_need_the_humidity_of_the_species(String id, double percent, RiskBand band) {
        assertEquals(band, band(id, Bags.everyMinute().air(13, 20, percent)));
    }

    @Test
    void brassicae_is_inhibited_above_twenty_four_degrees() {
        assertEquals(
                RiskBand.NONE,
                band("alternaria-brassicae-spores", Bags.everyMinute().air(20, 24.1, 97)));
        assertEquals(
                RiskBand.MODERATE,
                band("alternaria-brassicae-spores", Bags.everyMinute().air(20, 24, 97)));
    }

    @Test
    void sclerotinia_wants_twenty_three_humid_hours_above_seven_degrees() {
        assertEquals(
                RiskBand.MODERATE, band("sclerotinia-petals", Bags.everyMinute().air(23, 7.1, 85)));
        assertEquals(RiskBand.LOW, band("sclerotinia-petals", Bags.everyMinute().air(22.9, 7.1, 85)));
        assertEquals(
                RiskBand.NONE, band("sclerotinia-petals", Bags.everyMinute().air(23, 7, 85)));
    }
}
