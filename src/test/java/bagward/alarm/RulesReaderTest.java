package bagward.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.document.Inspection;
import bagward.document.Section;
import bagward.fault.Fault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class RulesReaderTest {
    private static final Set<RuleKind> OF_THE_SYSTEM = EnumSet.of(
            RuleKind.SENSOR_CLOCK,
            RuleKind.STATION_CLOCK,
            RuleKind.STORE_AWAY,
            RuleKind.SPOOL_FILLING,
            RuleKind.DISK_FILLING);

    private static final String GOOD = """
            rules:
              - id: damp
                name: Bag damp
                watches: bag-damp
                limit: 91
                deadband: 1.5
                on-delay: 6 h
                off-delay: 30 min
                re-alarm: 1 d
                priority: low
                card:
                  what: Swap the bag.
                  why: Wet buds rot.
                  how-soon: Today.
                  proof: Dry film.
            """;

    private final Inspection inspection = new Inspection();

    @Test
    void a_rule_is_read_with_all_its_parts() {
        assertEquals(
                List.of(new Rule(
                        new RuleId("damp"),
                        "Bag damp",
                        RuleKind.BAG_DAMP,
                        91,
                        1.5,
                        Duration.ofHours(6),
                        Duration.ofMinutes(30),
                        Optional.of(Duration.ofDays(1)),
                        Priority.LOW,
                        new ActionCard("Swap the bag.", "Wet buds rot.", "Today.", "Dry film.", ""))),
                read(GOOD));
        assertEquals(List.of(), inspection.faults());
    }

    @Test
    void a_rule_without_a_card_is_refused() {
        assertEquals(List.of(), read(GOOD.substring(0, GOOD.indexOf("    card:"))));
        assertEquals(
                "rules.yaml line 2, rules[0].card: this is required and missing.",
                inspection.faults().get(0).sentence());
    }

    @Test
    void a_card_without_a_proof_is_refused() {
        read(GOOD.replace("      proof: Dry film.\n", ""));
        assertTrue(inspection.faults().get(0).sentence().contains("rules[0].card.proof"));
    }

    @Test
    void every_fault_is_named_with_its_place_value_and_rule() {
        read(GOOD.replace("91", "101").replace("bag-damp", "bag-dampp").replace("6 h", "6 hours"));
        String all = inspection.faults().stream().map(Fault::sentence).collect(Collectors.joining("\n"));
        assertTrue(all.contains("found 'bag-dampp'; must be one of"), all);
        assertTrue(all.contains("Did you mean 'bag-damp'?"), all);
        assertTrue(all.contains("found '6 hours'; must be a duration"), all);
    }

    @Test
    void a_limit_that_makes_no_sense_for_its_kind_is_refused_with_the_unit() {
        read(GOOD.replace("limit: 91", "limit: 101"));
        assertTrue(inspection.faults().get(0).sentence().contains("must be a number from 50 to 100 %RH"));
    }

    @Test
    void two_rules_of_one_name_are_refused() {
        read(GOOD + GOOD.replace("rules:\n", ""));
        assertTrue(inspection.faults().get(0).sentence().contains("is used by another rule"));
    }

    @Test
    void the_default_rules_are_sound_few_and_mostly_low() throws IOException {
        List<Rule> rules = read(Files.readString(Path.of("seeds", "rules.yaml")));
        assertEquals(List.of(), inspection.faults());
        assertTrue(rules.stream().filter(r -> !OF_THE_SYSTEM.contains(r.kind())).count() <= 9, "few rules");
        Set<RuleKind> kinds = rules.stream().map(Rule::kind).collect(Collectors.toSet());
        assertEquals(EnumSet.allOf(RuleKind.class), kinds);
        long high = rules.stream().filter(r -> r.priority() == Priority.HIGH).count();
        assertTrue(high * 3 <= rules.size(), "few are high");
        for (Rule rule : rules) {
            if (rule.kind() == RuleKind.BAG_DUE) {
                assertEquals(0, rule.deadband(), "a date has no noise");
            }
            if (rule.kind() == RuleKind.BAG_DAMP) {
                assertFalse(rule.deadband() < 2, "not smaller than a humidity sensor repeats");
            }
        }
    }

    private List<Rule> read(String text) {
        return RulesReader.read(Section.parse("rules.yaml", text, inspection).sections("rules", 1));
    }
}
