package bagward.mould;

import bagward.bag.MaterialId;
import bagward.document.Inspection;
import bagward.document.Section;
import bagward.fault.ImpossibleValueException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads what the mould index grows on from its document; the keys are explained at its top. */
public final class SurfacesReader {
    private static final Map<String, Substrate> SUBSTRATES = Stream.of(Substrate.values())
            .collect(Collectors.toUnmodifiableMap(
                    s -> s.name().toLowerCase(Locale.ROOT).replace('_', '-'), Function.identity()));

    private SurfacesReader() {}

    /** The substrates by their words in documents. */
    static Map<String, Substrate> substrates() {
        return SUBSTRATES;
    }

    /**
     * Reads a whole document.
     *
     * @param name name of the document, for messages
     * @param text the document, YAML
     * @throws bagward.fault.RefusedInputException with every fault
     */
    public static Surfaces parse(String name, String text) {
        Inspection inspection = new Inspection();
        Section top = Section.parse(name, text, inspection);
        Optional<Surface> pods = surface(top.section("pods"));
        Map<MaterialId, Surface> bags = new HashMap<>();
        top.sections("bags", 0).forEach(entry -> bags(entry, bags));
        Optional<Surface> others = surface(top.section("other-bags"));
        Optional<Surfaces> surfaces = top.make(() -> new Surfaces(pods.orElseThrow(), bags, others.orElseThrow()));
        inspection.throwIfRefused();
        return surfaces.orElseThrow();
    }

    private static void bags(Section entry, Map<MaterialId, Surface> bags) {
        List<MaterialId> ids = new ArrayList<>();
        for (String word : entry.texts("materials", 1)) {
            try {
                ids.add(new MaterialId(word));
            } catch (ImpossibleValueException noMaterial) {
                entry.refuse("materials", String.valueOf(noMaterial.getMessage()));
            }
        }
        ids.stream()
                .filter(bags::containsKey)
                .forEach(id -> entry.refuse("materials", "'" + id + "' stands in a row before: name it once"));
        surface(entry).ifPresent(surface -> ids.forEach(id -> bags.put(id, surface)));
    }

    private static Optional<Surface> surface(Section section) {
        Optional<Substrate> substrate = section.choice("substrate", SUBSTRATES);
        String source = section.text("source");
        return section.make(() -> new Surface(substrate.orElseThrow(), source));
    }
}
