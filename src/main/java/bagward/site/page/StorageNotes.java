package bagward.site.page;

import bagward.mould.Storage;
import bagward.mould.StorageObservation;
import bagward.site.view.Fact;
import bagward.site.view.Words;
import java.util.ArrayList;
import java.util.List;

/** What is known of drying and keeping seed, as people read it. */
final class StorageNotes {
    private StorageNotes() {}

    /** One note each, with its source. */
    static List<Fact> of(Storage storage) {
        List<Fact> notes = new ArrayList<>();
        Storage.StoredMoisture stored = storage.stored();
        notes.add(new Fact(
                "Stored",
                "best at " + percent(stored.best().percent()) + " or less, never above "
                        + percent(stored.highest().percent()) + source(stored.source())));
        Storage.DryingPace pace = storage.pace();
        notes.add(new Fact(
                "Not too fast",
                percent(pace.safe()) + " a day did no harm, " + percent(pace.harmful()) + " a day in heat did"
                        + source(pace.source())));
        storage.seen().forEach(seen -> notes.add(new Fact("Seen on rapeseed", seen(seen))));
        notes.add(new Fact("Fungi by humidity", storage.bandsSource()));
        notes.add(new Fact("Oil in the seed", storage.oil().source()));
        return notes;
    }

    private static String seen(StorageObservation seen) {
        return "at " + percent(seen.moisture().percent()) + " and " + Words.whole(seen.celsius()) + " °C after "
                + Words.span(seen.after()) + ": " + seen.seen() + source(seen.source());
    }

    private static String percent(double value) {
        return Words.oneDecimal(value).replace(".0", "") + " %";
    }

    private static String source(String source) {
        return " (" + source + ")";
    }
}
