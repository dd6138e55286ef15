package bagward.mould;

import bagward.document.Inspection;
import bagward.document.Section;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Reads the mould table from its document; the keys are explained at its top. */
public final class OrganismsReader {
    private static final double LONGEST = 1000;
    private static final Map<String, Function<Section, Optional<MouldModel>>> MODELS = Map.of(
            "wetness-infection", OrganismsReader::wetnessInfection,
            "infection-logit", section -> Optional.of(new InfectionLogit()),
            "humid-hours", OrganismsReader::humidHours,
            "growth-index", OrganismsReader::growthIndex);

    private OrganismsReader() {}

    /**
     * Reads a whole document.
     *
     * @param name name of the document, for messages
     * @param text the document, YAML
     * @return its organisms in their order, at least one
     * @throws bagward.fault.RefusedInputException with every fault
     */
    public static List<Organism> parse(String name, String text) {
        Inspection inspection = new Inspection();
        Section top = Section.parse(name, text, inspection);
        List<Organism> organisms = read(top.sections("organisms", 1));
        top.make(() -> organisms);
        inspection.throwIfRefused();
        return organisms;
    }

    private static List<Organism> read(List<Section> entries) {
        List<Organism> organisms = new ArrayList<>();
        Set<String> used = new HashSet<>();
        for (Section entry : entries) {
            String id = entry.text("id");
            if (!id.isEmpty() && !used.add(id)) {
                entry.refuse("id", "is used by another organism: give each its own");
            }
            organism(entry, id).ifPresent(organisms::add);
        }
        return List.copyOf(organisms);
    }

    private static Optional<Organism> organism(Section entry, String id) {
        String name = entry.text("name");
        String source = entry.text("source");
        Optional<BandLimits> bands = entry.findSection("bands").flatMap(OrganismsReader::bands);
        Optional<Function<Section, Optional<MouldModel>>> reader = entry.choice("model", MODELS);
        if (reader.isEmpty()) {
            // Which keys belong here depends on the model; without it, calling them unknown would only mislead.
            return Optional.empty();
        }
        Optional<MouldModel> model = reader.get().apply(entry);
        return entry.make(() -> new Organism(
                id,
                name,
                model.orElseThrow(),
                bands.orElseGet(() -> model.orElseThrow().usualBands()),
                source));
    }

    private static Optional<BandLimits> bands(Section section) {
        double low = section.number("low", -100, 100, "");
        double moderate = section.number("moderate", -100, 100, "");
        double high = section.has("high") ? section.number("high", -100, 100, "") : Double.POSITIVE_INFINITY;
        return section.make(() -> new BandLimits(low, moderate, high));
    }

    private static Optional<MouldModel> wetnessInfection(Section entry) {
        double lowest = entry.number("lowest-celsius", -20, 60, "°C");
        double best = entry.number("best-celsius", -20, 60, "°C");
        double highest = entry.number("highest-celsius", -20, 60, "°C");
        double shortest = entry.number("shortest-hours", 0.1, LONGEST, "h");
        double longest =
                entry.number("longest-hours", 0.1, LONGEST, "h", WetnessInfection.longestFromShortest(shortest));
        DryBreak dryBreak = dryBreak(entry);
        return entry.make(() -> new WetnessInfection(lowest, best, highest, shortest, longest, dryBreak));
    }

    private static Optional<MouldModel> humidHours(Section entry) {
        double percent = entry.number("humidity-percent", 0, 100, "%RH");
        double above = entry.number("above-celsius", -20, 60, "°C");
        double upTo = entry.number("up-to-celsius", above, 60, "°C");
        double needed = entry.number("needed-hours", 0.1, LONGEST, "h");
        DryBreak dryBreak = dryBreak(entry);
        return entry.make(() -> new HumidHours(WetRule.humidFrom(percent, above, upTo), needed, dryBreak));
    }

    private static Optional<MouldModel> growthIndex(Section entry) {
        return entry.choice("substrate", SurfacesReader.substrates()).map(GrowthIndex::new);
    }

    private static DryBreak dryBreak(Section entry) {
        return DryBreak.endingFrom(entry.number("dry-break-hours", 0, LONGEST, "h"));
    }
}
