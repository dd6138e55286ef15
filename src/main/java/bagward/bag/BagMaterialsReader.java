package bagward.bag;

import bagward.document.Section;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads bag materials from a document (form: {@code seeds/bag-materials.yaml}). */
public final class BagMaterialsReader {
    private static final Duration SHORTEST = Duration.ofDays(1);
    private static final Duration LONGEST = Duration.ofDays(60);

    private BagMaterialsReader() {}

    /**
     * Reads the list under "materials".
     *
     * @param top the document; its inspection takes every fault
     * @return the materials in the order of the document; incomplete if the inspection has a fault
     */
    public static List<BagMaterial> read(Section top) {
        List<BagMaterial> materials = read(top.sections("materials", 1));
        top.make(() -> materials);
        return materials;
    }

    /**
     * Reads the entries of a list of materials.
     *
     * @param entries the list; their inspection takes every fault
     * @return the materials in the order of the list; incomplete if the inspection has a fault
     */
    public static List<BagMaterial> read(List<Section> entries) {
        List<BagMaterial> materials = new ArrayList<>();
        Set<MaterialId> seen = new HashSet<>();
        entries.forEach(entry -> material(entry, seen).ifPresent(materials::add));
        return List.copyOf(materials);
    }

    private static Optional<BagMaterial> material(Section section, Set<MaterialId> seen) {
        Optional<MaterialId> id = section.value("id", MaterialId::new);
        if (id.isPresent() && !seen.add(id.get())) {
            section.refuse("id", "a material stands in the list once");
        }
        String name = section.text("name");
        Optional<Spread> day = spread(section, "closure-by-day", 1, "");
        Optional<Spread> night = spread(section, "closure-by-night", 1, "");
        Optional<Spread> gain = spread(section, "sun-gain", 0.1, "K per W/m2");
        Optional<Spread> response = spread(section, "response", 120, "minutes");
        Duration daysOn = section.duration("on-for", SHORTEST, LONGEST);
        String source = section.text("source");
        return section.make(() -> new BagMaterial(
                id.orElseThrow(),
                name,
                day.orElseThrow(),
                night.orElseThrow(),
                gain.orElseThrow(),
                response.orElseThrow(),
                daysOn,
                source));
    }

    private static Optional<Spread> spread(Section section, String key, double highest, String unit) {
        Section spread = section.section(key);
        double mean = spread.number("mean", highest / 1000, highest, unit);
        double deviation = spread.number("deviation", 0, highest, unit);
        return spread.make(() -> new Spread(mean, deviation));
    }
}
