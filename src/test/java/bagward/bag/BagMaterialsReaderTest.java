package bagward.bag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.document.Inspection;
import bagward.document.Section;
import bagward.fault.Fault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class BagMaterialsReaderTest {
    private final Inspection inspection = new Inspection();

    @Test
    void the_seeds_are_read_whole() throws IOException {
        List<BagMaterial> materials = read(Files.readString(Path.of("seeds/bag-materials.yaml")));

        assertEquals(List.of(), inspection.faults());
        assertEquals(6, materials.size());
        assertEquals(new Spread(0.02, 0.006), materials.get(2).sunGain());
        assertTrue(materials.stream().noneMatch(m -> m.source().isBlank()));
    }

    @Test
    void a_wrong_value_is_named_by_line_and_path() throws IOException {
        String seeds = Files.readString(Path.of("seeds/bag-materials.yaml"));

        read(seeds.replace("mean: 0.4,", "mean: 1.4,"));

        List<String> places = inspection.faults().stream().map(Fault::place).toList();
        assertTrue(places.get(0).contains("materials[2].closure-by-day.mean"), places.toString());
    }

    @Test
    void a_material_stands_there_once() throws IOException {
        String seeds = Files.readString(Path.of("seeds/bag-materials.yaml"));

        read(seeds.replace("id: paper", "id: mesh"));

        assertEquals(
                "a material stands in the list once", inspection.faults().get(0).rule());
    }

    private List<BagMaterial> read(String text) {
        return BagMaterialsReader.read(Section.parse("bag-materials.yaml", text, inspection));
    }
}
