package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.BagClimate;
import java.util.List;
import org.junit.jupiter.api.Test;

class MouldRiskTest {
    private static final List<Organism> FLOWERS = List.of(Rows.BOTRYTIS_ON_FLOWERS);

    @Test
    void a_long_wet_night_is_high_and_says_why_in_numbers() {
        BagClimate bag = Bags.everyMinute().air(5, 20, 70).air(6.5, 14, 97).build();
        RiskAssessment risk = MouldRisk.assess(bag, FLOWERS);
        assertEquals(RiskBand.HIGH, risk.band());
        assertEquals("wet 6.5 h at 14 °C, Botrytis on flowers needs 2.3 h", risk.reason());
        assertEquals(6.5, risk.wetHours(), 1e-9);
        assertEquals(0, risk.unknownHours());
    }

    @Test
    void a_dry_bag_is_never_said_to_have_no_mould() {
        RiskAssessment risk =
                MouldRisk.assess(Bags.everyMinute().air(48, 20, 70).build(), FLOWERS);
        assertEquals(RiskBand.NONE, risk.band());
        assertTrue(risk.reason().endsWith("low estimated risk, look"), risk.reason());
    }

    @Test
    void hours_without_data_are_counted_and_told() {
        RiskAssessment risk =
                MouldRisk.assess(Bags.everyMinute().air(1, 20, 70).gap(3.5).build(), FLOWERS);
        assertEquals(3.5, risk.unknownHours(), 1e-9);
        assertTrue(risk.reason().contains("3.5 h unknown"), risk.reason());
    }

    @Test
    void drying_does_not_undo_an_infection() {
        BagClimate bag = Bags.everyMinute().air(4, 15, 98).air(60, 22, 50).build();
        assertEquals(RiskBand.HIGH, MouldRisk.assess(bag, FLOWERS).band());
    }

    @Test
    void an_infection_that_was_complete_stays_when_the_wet_air_cools() {
        BagClimate warm = Bags.everyMinute().air(1.25, 25, 98).build();
        BagClimate thenCold =
                Bags.everyMinute().air(1.25, 25, 98).air(12, 2, 98).build();
        RiskAssessment risk = MouldRisk.assess(warm, FLOWERS);
        assertEquals(RiskBand.HIGH, risk.band());
        assertEquals(RiskBand.HIGH, MouldRisk.assess(thenCold, FLOWERS).band());
    }

    @Test
    void the_worst_organism_decides_and_the_first_of_equals() {
        BagClimate bag = Bags.everyMinute().air(13, 18, 96).build();
        List<Organism> both = List.of(Rows.BOTRYTIS_LOGIT, Rows.ALTERNARIA_SPORES, Rows.BOTRYTIS_ON_FLOWERS);
        assertEquals("Alternaria for spores", MouldRisk.assess(bag, both).organism());
        MouldReport report = MouldRisk.report(bag, both, DryBreak.endingFrom(4));
        assertEquals(
                List.of(RiskBand.MODERATE, RiskBand.HIGH, RiskBand.HIGH),
                report.risks().stream().map(OrganismRisk::band).toList());
    }

    @Test
    void the_time_of_each_band_is_when_the_spell_was_long_enough() {
        BagClimate bag = Bags.everyMinute().air(6, 18, 60).air(13, 18, 96).build();
        BandTimes reached = MouldRisk.report(bag, List.of(Rows.ALTERNARIA_SPORES), DryBreak.endingFrom(4))
                .risks()
                .get(0)
                .reached();
        assertEquals(Bags.START.plusSeconds(12 * 3600), reached.moderate().orElseThrow());
        assertEquals(Bags.START.plusSeconds(18 * 3600), reached.high().orElseThrow());
        BandTimes.Reached next =
                reached.nextAfter(Bags.START.plusSeconds(13 * 3600)).orElseThrow();
        assertEquals(RiskBand.HIGH, next.band());
        assertEquals(reached.high().orElseThrow(), next.at());
        assertTrue(reached.nextAfter(next.at()).isEmpty());
    }

    @Test
    void the_interval_of_humidity_gives_an_interval_of_risk() {
        BagClimate bag = Bags.everyMinute().sureTo(3).air(6, 15, 96).build();
        OrganismRisk risk =
                MouldRisk.report(bag, FLOWERS, DryBreak.endingFrom(4)).risks().get(0);
        assertEquals(RiskBand.NONE, risk.certain());
        assertEquals(RiskBand.HIGH, risk.band());
        assertEquals(RiskBand.HIGH, risk.possible());
        assertFalse(risk.reason().isEmpty());
    }
}
