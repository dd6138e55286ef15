package bagward.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.CropId;
import bagward.bag.MaterialId;
import bagward.bag.Quantile;
import bagward.document.Inspection;
import bagward.document.Section;
import bagward.fault.Fault;
import bagward.station.HouseId;
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
    void a_rule_acts_on_the_best_value_unless_it_says_otherwise() {
        assertEquals(Quantile.MIDDLE, read(GOOD).get(0).actsOn());
        String upper = GOOD.replace("    limit: 91", "    acts-on: possible\n    limit: 91");
        assertEquals(Quantile.POSSIBLE, read(upper).get(0).actsOn());
        assertEquals(
                new Quantile(0.8), read(upper.replace("possible", "0.8")).get(0).actsOn());
        assertEquals(List.of(), inspection.faults());
    }

    @Test
    void acts_on_is_refused_where_nothing_is_estimated_and_between_the_levels_of_water_on_the_film() {
        String upper =
                GOOD.replace("    limit: 91", "    acts-on: 0.8\n    limit: 20").replace("1.5", "0");
        read(upper.replace("bag-damp", "bag-mould"));
        read(upper.replace("bag-damp", "bag-due"));
        read(upper.replace("0.8", "often"));
        String all = inspection.faults().stream().map(Fault::sentence).collect(Collectors.joining("\n"));
        assertTrue(all.contains("acts-on: found '0.8'; must be sure, middle or possible for bag-mould"), all);
        assertTrue(all.contains("acts-on: found '0.8'; is only for rules on bag-damp, bag-hot and bag-mould"), all);
        assertTrue(all.contains("acts-on: found 'often'; must be sure, middle, possible, or a number"), all);
    }

    @Test
    void a_house_calls_from_so_many_bags_on_until_a_change_takes_that_back() {
        assertEquals(Optional.empty(), read(GOOD).get(0).togetherFrom());
        String together = GOOD.replace("    limit: 91", "    together-from: 3\n    limit: 91");
        List<Rule> known = read(together);
        assertEquals(Optional.of(3), known.get(0).togetherFrom());
        String id = "rules:\n  - id: " + known.get(0).id() + "\n";
        assertEquals(known, changed(known, id));
        assertEquals(
                Optional.empty(),
                changed(known, id + "    together-from: 0\n").get(0).togetherFrom());
        assertEquals(List.of(), inspection.faults());
    }

    @Test
    void one_bag_is_no_company_and_what_is_about_one_bag_cannot_be_called_for_by_its_house() {
        String alone = GOOD.replace("    limit: 91", "    together-from: 1\n    limit: 20")
                .replace("1.5", "0");
        read(alone);
        read(alone.replace("from: 1", "from: 3").replace("bag-damp", "bag-due"));
        String all = inspection.faults().stream().map(Fault::sentence).collect(Collectors.joining("\n"));
        assertTrue(all.contains("together-from: found '1'; must be 2 or more, or 0"), all);
        assertTrue(all.contains("together-from: found '3'; is only for rules on bag-damp and bag-hot"), all);
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
        assertTrue(rules.stream().filter(r -> !OF_THE_SYSTEM.contains(r.kind())).count() <= 13, "few rules");
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

    @Test
    void an_entry_that_names_a_known_rule_changes_what_it_gives_and_leaves_the_rest() {
        List<Rule> known = read(GOOD);
        Rule changed = changed(known, "rules:\n  - {id: damp, limit: 93, on-delay: 8 h}\n")
                .get(0);
        Rule before = known.get(0);
        assertEquals(93, changed.limit());
        assertEquals(Duration.ofHours(8), changed.onDelay());
        assertEquals(
                List.of(
                        before.name(),
                        before.kind(),
                        before.deadband(),
                        before.reAlarm(),
                        before.priority(),
                        before.card()),
                List.of(
                        changed.name(),
                        changed.kind(),
                        changed.deadband(),
                        changed.reAlarm(),
                        changed.priority(),
                        changed.card()));
        assertEquals(List.of(), inspection.faults());
    }

    @Test
    void a_rule_is_taken_out_by_its_id_and_only_if_its_entry_is_sound() {
        assertEquals(List.of(), changed(read(GOOD), "rules:\n  - {id: damp, enabled: false}\n"));
        changed(read(GOOD), "rules:\n  - {id: damp, enabled: false, limit: 300}\n");
        assertTrue(inspection.faults().get(0).sentence().contains("must be a number from 50 to 100 %RH"));
    }

    @Test
    void what_is_known_of_a_rule_does_not_serve_one_that_watches_something_else() {
        changed(read(GOOD), "rules:\n  - {id: damp, watches: bag-due}\n");
        List<String> missing = inspection.faults().stream().map(Fault::place).toList();
        assertTrue(missing.stream().anyMatch(place -> place.endsWith(".limit")), missing::toString);
        assertTrue(missing.stream().anyMatch(place -> place.endsWith(".card")), missing::toString);
    }

    @Test
    void a_rule_has_other_limits_by_house_material_and_crop_and_the_first_that_fits_counts() {
        Rule rule = changed(read(GOOD), """
            rules:
              - id: damp
                other-limits:
                  - {house: north, material: film, limit: 95}
                  - {house: north, limit: 93}
                  - {material: film, crop: napus, limit: 90}
                  - {material: film, limit: 88}
                  - {crop: napus, limit: 87}
            """).get(0);
        assertEquals(95, rule.at(bag("north", "film", "oleracea")).limit());
        assertEquals(93, rule.at(bag("north", "paper", "napus")).limit());
        assertEquals(93, rule.at(Circumstances.of(new HouseId("north"))).limit());
        assertEquals(90, rule.at(bag("south", "film", "napus")).limit());
        assertEquals(88, rule.at(bag("south", "film", "oleracea")).limit());
        assertEquals(87, rule.at(bag("south", "paper", "napus")).limit());
        assertEquals(91, rule.at(bag("south", "paper", "oleracea")).limit());
        assertEquals(91, rule.at(Circumstances.of(new HouseId("south"))).limit());
    }

    @Test
    void other_limits_for_what_is_not_there_or_for_everything_are_refused_with_their_place() {
        changed(read(GOOD), """
            rules:
              - id: damp
                other-limits:
                  - {house: west, limit: 95}
                  - {limit: 93}
                  - {material: silk, limit: 20}
                  - {crop: nappus, limit: 93}
            """);
        String all = inspection.faults().stream().map(Fault::sentence).collect(Collectors.joining("\n"));
        assertTrue(all.contains("other-limits[0].house: found 'west'; must be the id of a house"), all);
        assertTrue(all.contains("other-limits[1].house: must be given, or a material"), all);
        assertTrue(all.contains("other-limits[2].material: found 'silk'; must be the id of a bag material"), all);
        assertTrue(all.contains("other-limits[3].crop: found 'nappus'; must be the id of a crop"), all);
        assertTrue(all.contains("other-limits[2].limit: found '20'; must be a number from 50 to 100 %RH"), all);
    }

    private static Circumstances bag(String house, String material, String crop) {
        return new Circumstances(
                new HouseId(house), Optional.of(new MaterialId(material)), Optional.of(new CropId(crop)));
    }

    private List<Rule> changed(List<Rule> known, String text) {
        RulesReader reader = new RulesReader(
                house -> Set.of("north", "south").contains(house.value()),
                material -> Set.of("film", "paper").contains(material.value()),
                crop -> crop.value().equals("napus"));
        return reader.changed(
                known, Section.parse("bagward.yaml", text, inspection).sections("rules", 1));
    }

    private List<Rule> read(String text) {
        return RulesReader.read(Section.parse("rules.yaml", text, inspection).sections("rules", 1));
    }
}
