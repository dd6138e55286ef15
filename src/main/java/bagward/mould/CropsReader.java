package bagward.mould;

import bagward.bag.CropId;
import bagward.document.Inspection;
import bagward.document.Section;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the crops from their document; the keys are explained at its top. */
public final class CropsReader {
    private static final Duration NO_TIME = Duration.ZERO;
    private static final Duration LONGEST = Duration.ofDays(60);

    private CropsReader() {}

    /**
     * Reads a whole document.
     *
     * @param name name of the document, for messages
     * @param text the document, YAML
     * @return its crops in their order, at least one
     * @throws bagward.fault.RefusedInputException with every fault
     */
    public static List<Crop> parse(String name, String text) {
        Inspection inspection = new Inspection();
        Section top = Section.parse(name, text, inspection);
        List<Crop> crops = new ArrayList<>();
        Set<CropId> used = new HashSet<>();
        for (Section entry : top.sections("crops", 1)) {
            Optional<CropId> id = entry.value("id", CropId::new);
            id.filter(i -> !used.add(i))
                    .ifPresent(i -> entry.refuse("id", "is used by another crop: give each its own"));
            crop(entry, id).ifPresent(crops::add);
        }
        top.make(() -> crops);
        inspection.throwIfRefused();
        return List.copyOf(crops);
    }

    private static Optional<Crop> crop(Section entry, Optional<CropId> id) {
        String name = entry.text("name");
        Optional<HeatLimits> heat = heat(entry.section("heat"));
        Optional<Crop.BagTimes> bag = bag(entry.section("bag"));
        Optional<Crop.RipeningWindow> ripening = ripening(entry.section("ripening"));
        return entry.make(
                () -> new Crop(id.orElseThrow(), name, heat.orElseThrow(), bag.orElseThrow(), ripening.orElseThrow()));
    }

    private static Optional<HeatLimits> heat(Section section) {
        double watch = section.number("watch-celsius", 0, 60, "°C");
        double heat = section.number("heat-celsius", 0, 60, "°C");
        Duration heatFor = section.duration("heat-for", NO_TIME, LONGEST);
        double loss = section.number("loss-celsius", 0, 60, "°C");
        String source = section.text("source");
        return section.make(() -> new HeatLimits(watch, heat, heatFor, loss, source));
    }

    private static Optional<Crop.BagTimes> bag(Section section) {
        Duration due = section.duration("due-after", Duration.ofDays(1), LONGEST);
        Duration every = section.duration("overdue-every", Duration.ofHours(1), LONGEST);
        Duration pollination = section.duration("after-pollination", NO_TIME, LONGEST);
        Duration flower = section.duration("after-last-flower", NO_TIME, LONGEST);
        String source = section.text("source");
        return section.make(() -> new Crop.BagTimes(due, every, pollination, flower, source));
    }

    private static Optional<Crop.RipeningWindow> ripening(Section section) {
        int first = section.whole("first-day", 1, 365, "days");
        int last = section.whole("last-day", 1, 365, "days");
        String source = section.text("source");
        return section.make(() -> new Crop.RipeningWindow(first, last, source));
    }
}
