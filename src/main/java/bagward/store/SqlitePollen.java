package bagward.store;

import bagward.pollen.PollenEntry;
import java.time.Instant;
import java.util.List;

/** Pollen scores in the table {@code pollen_entry}, each as one document. */
final class SqlitePollen implements PollenStore {
    private static final String ADD =
            "INSERT INTO pollen_entry (house, scored_at, recorded_at, entered_by, document) VALUES (?, ?, ?, ?, ?)";

    private final Database database;

    SqlitePollen(Database database) {
        this.database = database;
    }

    @Override
    public void append(List<PollenEntry> entries, Instant recordedAt) {
        long recorded = Millis.atOrBefore(recordedAt);
        database.write("entering " + entries.size() + " pollen scores", session -> {
            for (PollenEntry entry : entries) {
                String house = entry.house().value();
                long scored = Millis.atOrBefore(entry.at());
                session.update(ADD, house, scored, recorded, entry.by(), PollenJson.write(entry));
            }
            return entries.size();
        });
    }

    @Override
    public List<PollenEntry> entries() {
        return database.list(
                "reading the pollen scores",
                "SELECT document FROM pollen_entry ORDER BY id",
                row -> PollenJson.read(row.getString(1)));
    }
}
