package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.BagClimate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WetSpellsTest {
    private static final DryBreak FOUR_HOURS = DryBreak.endingFrom(4);

    private static List<WetSpell> spells(Bags bags) {
        return WetSpells.of(bags.build(), WetRule.WATER, FOUR_HOURS);
    }

    @Test
    void a_spell_has_start_end_hours_and_mean_temperature() {
        WetSpell spell = spells(Bags.everyMinute()
                        .air(2, 20, 60)
                        .air(3, 16, 97)
                        .air(1, 12, 99)
                        .air(9, 20, 60))
                .get(0);
        assertEquals(Bags.START.plusSeconds(2 * 3600), spell.start());
        assertEquals(Bags.START.plusSeconds(6 * 3600), spell.end());
        assertEquals(4, spell.hours(), 1e-9);
        assertEquals(15, spell.meanCelsius(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"3.9, 1", "4, 2", "4.1, 2"})
    void a_break_shorter_than_the_limit_joins_and_one_of_the_limit_parts(double dryHours, int spells) {
        Bags bags = Bags.everyMinute().air(2, 15, 97).air(dryHours, 15, 60).air(2, 15, 97);
        assertEquals(spells, spells(bags).size());
    }

    @ParameterizedTest
    @CsvSource({"4, 1", "4.1, 2"})
    void a_break_that_may_last_as_long_as_the_limit_joins_there(double dryHours, int spells) {
        BagClimate bag = Bags.everyMinute()
                .air(2, 15, 97)
                .air(dryHours, 15, 60)
                .air(2, 15, 97)
                .build();
        assertEquals(
                spells,
                WetSpells.of(bag, WetRule.WATER, DryBreak.endingBeyond(4)).size());
    }

    @Test
    void dry_time_inside_a_spell_is_no_wet_time_and_does_not_colour_its_temperature() {
        WetSpell spell = spells(Bags.everyMinute().air(2, 14, 97).air(3, 30, 60).air(2, 14, 97))
                .get(0);
        assertEquals(4, spell.hours(), 1e-9);
        assertEquals(14, spell.meanCelsius(), 1e-9);
    }

    @Test
    void wet_begins_at_ninety_five_and_ends_below_ninety_three() {
        assertEquals(0, spells(Bags.everyMinute().air(5, 15, 94.9)).size());
        assertEquals(
                6,
                spells(Bags.everyMinute().air(1, 15, 95).air(5, 15, 93).air(3, 15, 92.9))
                        .get(0)
                        .hours(),
                1e-9);
    }

    @Test
    void water_on_the_film_is_wet_at_any_humidity_but_not_for_certain() {
        WetSpell spell = spells(Bags.everyMinute().filmWet(2, 15, 80)).get(0);
        assertEquals(2, spell.hours(), 1e-9);
        assertEquals(0, spell.certainHours(), 1e-9);
        assertEquals(2, spell.possibleHours(), 1e-9);
    }

    @Test
    void the_ends_of_the_interval_give_certain_and_possible_hours() {
        Bags bags = Bags.everyMinute()
                .sureTo(2)
                .air(2, 15, 94)
                .air(2, 15, 96)
                .air(2, 15, 99)
                .air(2, 15, 60);
        WetSpell spell = spells(bags).get(0);
        assertEquals(4, spell.hours(), 1e-9);
        assertEquals(2, spell.certainHours(), 1e-9);
        assertEquals(6, spell.possibleHours(), 1e-9);
    }

    @Test
    void spells_that_run_together_at_the_upper_end_say_so_and_each_states_the_whole() {
        List<WetSpell> spells = spells(Bags.everyMinute()
                .sureTo(4)
                .air(2, 15, 96)
                .air(5, 15, 92)
                .air(3, 15, 96)
                .air(6, 15, 60)
                .air(1, 15, 96));
        assertEquals(
                List.of(false, true, false),
                spells.stream().map(WetSpell::joinsBefore).toList());
        assertEquals(
                List.of(10.0, 10.0, 1.0),
                spells.stream().map(WetSpell::possibleHours).toList());
    }

    @Test
    void a_gap_is_neither_wet_nor_dry_and_is_counted() {
        WetSpell spell =
                spells(Bags.everyMinute().air(2, 15, 97).gap(6).air(2, 15, 97)).get(0);
        assertEquals(4, spell.hours(), 1e-9);
        assertEquals(6, spell.unknownHours(), 1e-9);
        Bags dryThenGap =
                Bags.everyMinute().air(2, 15, 97).air(4, 15, 60).gap(1).air(2, 15, 97);
        assertEquals(2, spells(dryThenGap).size());
    }

    @Test
    void a_long_spell_is_one_spell() {
        assertEquals(1, spells(Bags.everyMinute().air(60, 15, 97)).size());
        assertEquals(1, spells(Bags.everyHour().air(60, 15, 97)).size());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void certain_is_never_more_than_likely_nor_likely_more_than_possible(long seed) {
        Random random = new Random(seed);
        Bags bags = Bags.everyMinute().sureTo(random.nextDouble() * 6);
        for (int i = 0; i < 300; i++) {
            double hours = random.nextInt(90) / 60.0;
            double percent = 85 + random.nextDouble() * 15;
            switch (random.nextInt(6)) {
                case 0 -> bags.gap(hours);
                case 1 -> bags.filmWet(hours, 10 + random.nextInt(10), percent);
                default -> bags.air(hours, 10 + random.nextInt(10), percent);
            }
        }
        List<WetSpell> spells = spells(bags);
        assertTrue(spells.size() > 1, "the weather of this test must have spells");
        for (WetSpell spell : spells) {
            assertTrue(spell.certainHours() <= spell.hours() + 1e-9, spell::toString);
            assertTrue(spell.hours() <= spell.possibleHours() + 1e-9, spell::toString);
        }
        double wet = spells.stream().mapToDouble(WetSpell::hours).sum();
        assertEquals(MouldRisk.assess(bags.build(), List.of()).wetHours(), wet, 1e-9);
    }
}
