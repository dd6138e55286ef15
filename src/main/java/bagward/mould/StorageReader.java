package bagward.mould;

import bagward.document.Inspection;
import bagward.document.Section;
import bagward.units.SeedMoisture;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what is known of keeping seed from its document; the keys are explained at its top. */
public final class StorageReader {
    private static final Duration LONGEST = Duration.ofDays(3650);

    private StorageReader() {}

    /**
     * Reads a whole document.
     *
     * @param name name of the document, for messages
     * @param text the document, YAML
     * @throws bagward.fault.RefusedInputException with every fault
     */
    public static Storage parse(String name, String text) {
        Inspection inspection = new Inspection();
        Optional<Storage> storage = storage(Section.parse(name, text, inspection));
        inspection.throwIfRefused();
        return storage.orElseThrow();
    }

    private static Optional<Storage> storage(Section top) {
        Optional<OilShare> oil = oil(top.section("oil"));
        Optional<Storage.StoredMoisture> stored = stored(top.section("stored-at"));
        List<StorageBand> bands = new ArrayList<>();
        top.sections("bands", 1).forEach(entry -> band(entry).ifPresent(bands::add));
        String source = top.text("bands-source");
        List<StorageObservation> seen = new ArrayList<>();
        top.sections("observations", 0).forEach(entry -> observation(entry).ifPresent(seen::add));
        Optional<Storage.DryingPace> pace = pace(top.section("drying-pace"));
        return top.make(
                () -> new Storage(oil.orElseThrow(), stored.orElseThrow(), bands, source, seen, pace.orElseThrow()));
    }

    private static Optional<OilShare> oil(Section section) {
        double low = section.number("low", 0, 0.7, "of dry seed");
        double middle = section.number("middle", 0, 0.7, "of dry seed");
        double high = section.number("high", 0, 0.7, "of dry seed");
        String source = section.text("source");
        return section.make(() -> new OilShare(low, middle, high, source));
    }

    private static Optional<Storage.StoredMoisture> stored(Section section) {
        double best = moisture(section, "best-percent");
        double highest = moisture(section, "highest-percent");
        String source = section.text("source");
        return section.make(
                () -> new Storage.StoredMoisture(new SeedMoisture(best), new SeedMoisture(highest), source));
    }

    private static Optional<StorageBand> band(Section entry) {
        double from = entry.number("from-percent", 0, 100, "%RH");
        double to = entry.number("to-percent", 0, 100, "%RH");
        List<String> fungi = entry.texts("fungi", 1);
        double driest = moisture(entry, "seed-from-percent");
        double moistest = moisture(entry, "seed-to-percent");
        return entry.make(() -> new StorageBand(from, to, fungi, new SeedMoisture(driest), new SeedMoisture(moistest)));
    }

    private static Optional<StorageObservation> observation(Section entry) {
        double celsius = entry.number("celsius", -30, 60, "°C");
        double moisture = moisture(entry, "seed-percent");
        Duration after = entry.duration("after", Duration.ofHours(1), LONGEST);
        String seen = entry.text("seen");
        String source = entry.text("source");
        return entry.make(() -> new StorageObservation(celsius, new SeedMoisture(moisture), after, seen, source));
    }

    private static Optional<Storage.DryingPace> pace(Section section) {
        double safe = section.number("safe-percent-a-day", 0.01, 50, "% a day");
        double harmful = section.number("harmful-percent-a-day", 0.01, 50, "% a day");
        String source = section.text("source");
        return section.make(() -> new Storage.DryingPace(safe, harmful, source));
    }

    private static double moisture(Section section, String key) {
        return section.number(key, 0, 60, "% of the moist seed");
    }
}
