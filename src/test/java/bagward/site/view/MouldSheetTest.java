package bagward.site.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.mould.BandLimits;
import bagward.mould.BandTimes;
import bagward.mould.DryBreak;
import bagward.mould.MouldReport;
import bagward.mould.Organism;
import bagward.mould.OrganismRisk;
import bagward.mould.RiskAssessment;
import bagward.mould.RiskBand;
import bagward.mould.WetSpell;
import bagward.mould.WetnessInfection;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MouldSheetTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Dublin");
    private static final Instant START = Instant.parse("2031-04-11T20:00:00Z");
    private static final Organism ROW = new Organism(
            "botrytis",
            "botrytis on flowers",
            new WetnessInfection(1, 25, 34, 1, 12, DryBreak.endingFrom(4)),
            BandLimits.OF_NEED,
            "test row");

    @Test
    void a_spell_is_told_with_its_hours_at_both_ends_of_the_interval_and_those_without_data() {
        MouldSheet.Spell spell = sheet(1).spells().get(0);
        assertEquals(Words.dayAndClock(START, ZONE), spell.from());
        assertEquals(Words.dayAndClock(START.plus(Duration.ofHours(11)), ZONE), spell.to());
        assertEquals("9.5 h", spell.wet());
        assertEquals("12.3 °C", spell.celsius());
        assertEquals("4.0 h", spell.certain());
        assertEquals("13.0 h", spell.possible());
        assertEquals("0.5 h", spell.unknown());
    }

    @Test
    void possible_hours_of_spells_that_run_together_are_told_once() {
        List<String> possible =
                sheet(List.of(spell(13, false), spell(21, false), spell(21, true), spell(21, true))).spells().stream()
                        .map(MouldSheet.Spell::possible)
                        .toList();
        assertEquals(List.of("21.0 h, together with 2 older", "with the newer", "with the newer", "13.0 h"), possible);
    }

    @Test
    void the_newest_spells_come_first_and_older_ones_are_counted() {
        MouldSheet sheet = sheet(15);
        assertEquals(12, sheet.spells().size());
        assertEquals(3, sheet.left());
    }

    @Test
    void no_band_at_all_is_told_as_low_and_never_as_no_mould() {
        MouldSheet.Organism organism = sheet(0).organisms().get(0);
        assertEquals("low", organism.risk());
        assertEquals("low to high", organism.between());
        assertEquals("nothing counted so far", organism.reason());
        assertTrue(sheet(0).spells().isEmpty());
    }

    private static MouldSheet sheet(int spells) {
        return sheet(Collections.nCopies(spells, spell(13, false)));
    }

    private static WetSpell spell(double possibleHours, boolean joinsBefore) {
        return new WetSpell(START, START.plus(Duration.ofHours(11)), 9.5, 12.3, 4, possibleHours, joinsBefore, 0.5);
    }

    private static MouldSheet sheet(List<WetSpell> spells) {
        BandTimes never = new BandTimes(Optional.empty(), Optional.empty(), Optional.empty());
        return MouldSheet.of(
                new MouldReport(
                        new RiskAssessment(RiskBand.NONE, "", "", 0, 0),
                        List.of(new OrganismRisk(ROW, RiskBand.NONE, 0, never, "", RiskBand.NONE, RiskBand.HIGH)),
                        spells),
                ZONE);
    }
}
