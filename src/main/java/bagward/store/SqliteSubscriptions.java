package bagward.store;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Sessions and subscriptions in the tables {@code broker_session} and {@code subscription}. */
final class SqliteSubscriptions implements SubscriptionStore {
    private static final String HELD = "SELECT client, coalesce(filter, '') FROM broker_session"
            + " LEFT JOIN subscription ON session = id WHERE broker = ?";
    private static final String SESSION =
            "INSERT INTO broker_session (broker, client) VALUES (?, ?) ON CONFLICT DO NOTHING";
    private static final String HOLD = "INSERT INTO subscription (session, filter)"
            + " SELECT id, ? FROM broker_session WHERE broker = ? AND client = ? ON CONFLICT DO NOTHING";
    private static final String LET_GO = "DELETE FROM subscription WHERE filter = ?"
            + " AND session = (SELECT id FROM broker_session WHERE broker = ? AND client = ?)";
    private static final String LET_ALL_GO = "DELETE FROM subscription"
            + " WHERE session = (SELECT id FROM broker_session WHERE broker = ? AND client = ?)";
    private static final String END = "DELETE FROM broker_session WHERE broker = ? AND client = ?";

    private final Database database;

    SqliteSubscriptions(Database database) {
        this.database = database;
    }

    @Override
    public Map<String, Set<String>> held(String broker) {
        List<Map.Entry<String, String>> rows = database.list(
                "reading the subscriptions", HELD, row -> Map.entry(row.getString(1), row.getString(2)), broker);
        Map<String, Set<String>> held = new TreeMap<>();
        rows.forEach(row -> {
            Set<String> filters = held.computeIfAbsent(row.getKey(), c -> new TreeSet<>());
            if (!row.getValue().isEmpty()) {
                filters.add(row.getValue());
            }
        });
        return held;
    }

    @Override
    public void hold(String broker, String client, Collection<String> filters) {
        database.write("noting subscriptions", session -> {
            int changed = session.update(SESSION, broker, client);
            for (String filter : filters) {
                changed += session.update(HOLD, filter, broker, client);
            }
            return changed;
        });
    }

    @Override
    public void letGo(String broker, String client, Collection<String> filters) {
        database.write("forgetting subscriptions", session -> {
            int changed = 0;
            for (String filter : filters) {
                changed += session.update(LET_GO, filter, broker, client);
            }
            return changed;
        });
    }

    @Override
    public void end(String broker, String client) {
        database.write(
                "forgetting a session",
                session -> session.update(LET_ALL_GO, broker, client) + session.update(END, broker, client));
    }
}
