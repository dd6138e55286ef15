package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class OrganismsReaderTest {
    @Test
    void the_shipped_table_is_read_whole() {
        List<Organism> organisms = Seeds.organisms();
        assertEquals(12, organisms.size());
        assertEquals(Rows.FLOWERS, organisms.get(0).model());
        assertEquals(new InfectionLogit(), organisms.get(1).model());
        assertTrue(organisms.stream().anyMatch(o -> o.model() instanceof GrowthIndex));
        assertTrue(organisms.stream().anyMatch(o -> o.model() instanceof HumidHours));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/mould/alternaria-needed-hours.csv", numLinesToSkip = 1)
    void the_alternaria_rows_need_the_hours_of_the_table(String id, double celsius, double hours, double tolerance) {
        Organism organism = Seeds.organisms().stream()
                .filter(o -> o.id().equals(id))
                .findFirst()
                .orElseThrow();
        assertEquals(hours, ((WetnessInfection) organism.model()).neededHours(celsius), tolerance);
    }

    @Test
    void a_longest_need_that_was_left_out_follows_from_the_shortest() {
        Organism blister = Seeds.organisms().stream()
                .filter(o -> o.id().equals("white-blister"))
                .findFirst()
                .orElseThrow();
        assertEquals(12.8, ((WetnessInfection) blister.model()).longestHours(), 1e-12);
    }

    @Test
    void bands_of_a_row_replace_the_usual_ones() {
        Organism organism = OrganismsReader.parse("table", """
                        organisms:
                          - {id: a, name: A, model: infection-logit, bands: {low: 1, moderate: 2, high: 3}, source: prior}
                        """).get(0);
        assertEquals(new BandLimits(1, 2, 3), organism.bands());
    }

    @Test
    void every_fault_is_told_with_line_path_and_rule() {
        RefusedInputException refused =
                assertThrows(RefusedInputException.class, () -> OrganismsReader.parse("table", """
                        organisms:
                          - id: a
                            name: A
                            model: wetnes-infection
                            source: prior
                          - id: a
                            name: A
                            model: growth-index
                            substrate: marble
                            colour: green
                            source: prior
                        """));
        List<String> told = refused.faults().stream().map(Fault::sentence).toList();
        assertEquals(4, told.size(), () -> String.join("\n", told));
        assertTrue(told.get(0).contains("line 4") && told.get(0).contains("Did you mean 'wetness-infection'?"));
        assertTrue(told.get(1).contains("line 6") && told.get(1).contains("another organism"));
        assertTrue(told.get(2).contains("line 9") && told.get(2).contains("marble"));
        assertTrue(told.get(3).contains("line 10") && told.get(3).contains("colour"));
    }

    @Test
    void parameters_that_contradict_each_other_are_told_with_their_values() {
        RefusedInputException refused =
                assertThrows(RefusedInputException.class, () -> OrganismsReader.parse("table", """
                        organisms:
                          - id: a
                            name: A
                            model: wetness-infection
                            lowest-celsius: 10
                            best-celsius: 5
                            highest-celsius: 30
                            shortest-hours: 1
                            dry-break-hours: 4
                            source: prior
                        """));
        assertTrue(refused.getMessage().contains("10.0, 5.0, 30.0 °C"), refused.getMessage());
    }

    @Test
    void a_table_without_organisms_is_refused() {
        assertThrows(RefusedInputException.class, () -> OrganismsReader.parse("table", "organisms: []\n"));
    }
}
