package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.MaterialId;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import java.util.List;
import org.junit.jupiter.api.Test;

class SurfacesReaderTest {
    @Test
    void the_seeds_take_pods_as_sensitive_and_film_as_resistant_and_say_that_it_is_a_prior() {
        Surfaces surfaces = Seeds.surfaces();
        assertEquals(Substrate.SENSITIVE, surfaces.pods().substrate());
        assertTrue(surfaces.pods().source().startsWith("prior"));
        assertEquals(
                Substrate.RESISTANT, surfaces.of(new MaterialId("film-half-mm")).substrate());
        assertEquals(
                Substrate.VERY_SENSITIVE, surfaces.of(new MaterialId("paper")).substrate());
    }

    @Test
    void a_material_that_is_not_listed_is_taken_as_the_most_sensitive() {
        assertEquals(
                Substrate.VERY_SENSITIVE,
                Seeds.surfaces().of(new MaterialId("old-sheet")).substrate());
    }

    @Test
    void every_fault_of_a_document_is_named() {
        List<Fault> faults = assertThrows(RefusedInputException.class, () -> SurfacesReader.parse("surfaces", """
                        pods: {substrate: pine, source: prior}
                        bags:
                          - {materials: [paper, Paper!], substrate: resistant, source: prior}
                          - {materials: [paper], substrate: resistant, source: ""}
                        other-bags: {substrate: resistant, source: prior, colour: red}
                        """))
                .faults();
        assertEquals(
                List.of(
                        "surfaces line 1, pods.substrate",
                        "surfaces line 3, bags[0].materials",
                        "surfaces line 4, bags[1].source",
                        "surfaces line 5, other-bags.colour"),
                faults.stream().map(Fault::place).toList());
    }

    @Test
    void a_material_stands_in_one_row() {
        List<Fault> faults = assertThrows(RefusedInputException.class, () -> SurfacesReader.parse("surfaces", """
                        pods: {substrate: sensitive, source: prior}
                        bags:
                          - {materials: [paper], substrate: resistant, source: prior}
                          - {materials: [paper, mesh], substrate: sensitive, source: prior}
                        other-bags: {substrate: resistant, source: prior}
                        """))
                .faults();
        assertEquals(1, faults.size());
        assertTrue(faults.get(0).rule().contains("'paper' stands in a row before"), faults::toString);
    }
}
