package bagward.store;

import bagward.bag.RegisterChange;
import java.time.Instant;
import java.util.List;

/** Register changes in the table {@code register_change}, each as one document. */
final class SqliteRegister implements RegisterStore {
    private static final String ADD =
            "INSERT INTO register_change (tag, done_at, recorded_at, entered_by, document) VALUES (?, ?, ?, ?, ?)";

    private final Database database;

    SqliteRegister(Database database) {
        this.database = database;
    }

    @Override
    public void append(List<RegisterChange> changes, String by, Instant recordedAt) {
        long recorded = Millis.atOrBefore(recordedAt);
        database.write("entering " + changes.size() + " register changes", session -> {
            for (RegisterChange change : changes) {
                String tag = change.tag().value();
                long done = Millis.atOrBefore(change.at());
                session.update(ADD, tag, done, recorded, by, ChangeJson.write(change));
            }
            return changes.size();
        });
    }

    @Override
    public List<RegisterChange> changes() {
        return database.list(
                "reading the register",
                "SELECT document FROM register_change ORDER BY id",
                row -> ChangeReading.read(row.getString(1)));
    }
}
