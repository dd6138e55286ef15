package bagward.watch.rehearsal;

import bagward.alarm.Rule;
import bagward.alarm.RulesReader;
import bagward.bag.CropId;
import bagward.bag.MaterialId;
import bagward.document.Inspection;
import bagward.document.Section;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import bagward.station.HouseId;
import java.util.List;
import java.util.function.Predicate;

/** Reads changes to rules as they stand in a configuration. */
public final class RuleText {
    private static final String NAME = "rules";

    private final RulesReader reader;

    /**
     * A reader.
     *
     * @param houses whether there is such a house
     * @param materials whether there is such a bag material
     * @param crops whether there is such a crop
     */
    public RuleText(Predicate<HouseId> houses, Predicate<MaterialId> materials, Predicate<CropId> crops) {
        this.reader = new RulesReader(houses, materials, crops);
    }

    /**
     * Known rules with the changes of a text.
     *
     * @param text a document with the list "rules"; blank changes nothing
     * @throws RefusedInputException with every fault, each with its line
     */
    public List<Rule> changed(List<Rule> known, String text) {
        if (text.isBlank()) {
            return List.copyOf(known);
        }
        text.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .findFirst()
                .filter(line -> line.startsWith("-"))
                .ifPresent(RuleText::refuseBareList);
        Inspection inspection = new Inspection();
        Section top = Section.parse(NAME, text, inspection);
        List<Rule> rules = reader.changed(known, top.sections(NAME, 1));
        top.make(() -> rules);
        inspection.throwIfRefused();
        return rules;
    }

    private static void refuseBareList(String line) {
        throw new RefusedInputException(List.of(new Fault(
                NAME + " line 1",
                line,
                "the list needs its name",
                "Put a line “rules:” before it, as in the configuration.")));
    }
}
