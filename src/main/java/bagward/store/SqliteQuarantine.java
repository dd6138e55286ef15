package bagward.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;

/**
 * Unusable messages in the table {@code quarantine}, unknown topics in {@code heard_topic}. Equal messages (topic,
 * payload, reason) are one row with a count. Both tables are bounded, oldest rows go first: {@link #MOST_MESSAGES}
 * different messages and {@link #MOST_TOPICS} topics; what goes is logged.
 */
final class SqliteQuarantine implements QuarantineStore {
    static final int MOST_MESSAGES = 100_000;
    static final int MOST_TOPICS = 10_000;

    private static final String ADD = """
            INSERT INTO quarantine (digest, topic, payload, reason, first_at, last_at, messages)
            VALUES (?, ?, ?, ?, ?, ?, 1)
            ON CONFLICT (digest) DO UPDATE SET
                first_at = min(first_at, excluded.first_at),
                last_at = max(last_at, excluded.last_at),
                messages = messages + 1""";

    private static final String HEAR = """
            INSERT INTO heard_topic (topic, messages, last_at, sample) VALUES (?, ?, ?, ?)
            ON CONFLICT (topic) DO UPDATE SET
                messages = messages + excluded.messages,
                sample = CASE WHEN excluded.last_at >= last_at THEN excluded.sample ELSE sample END,
                last_at = max(last_at, excluded.last_at)""";

    private final Database database;

    SqliteQuarantine(Database database) {
        this.database = database;
    }

    /** Adds messages inside a transaction that is under way. */
    static void add(Session session, List<Quarantined> messages) throws SQLException {
        for (Quarantined message : messages) {
            long at = Millis.atOrBefore(message.arrivedAt());
            byte[] payload = message.payload().toBytes();
            session.update(ADD, Digest.of(message), message.topic(), payload, message.reason(), at, at);
        }
        if (!messages.isEmpty()) {
            Bound.keepNewest(session, "quarantine", "id", MOST_MESSAGES);
        }
    }

    @Override
    public void quarantine(List<Quarantined> messages) {
        database.write("keeping " + messages.size() + " unusable messages", session -> {
            add(session, messages);
            return messages.size();
        });
    }

    @Override
    public List<Quarantined> newestQuarantined(int most) {
        return database.list(
                "reading the quarantine",
                "SELECT last_at, topic, payload, reason FROM quarantine ORDER BY last_at DESC, id DESC LIMIT ?",
                SqliteQuarantine::message,
                most);
    }

    @Override
    public long quarantinedCount() {
        return database.number("counting the quarantine", "SELECT coalesce(sum(messages), 0) FROM quarantine");
    }

    @Override
    public void heard(List<HeardTopic> topics) {
        database.write("noting " + topics.size() + " topics", session -> {
            for (HeardTopic topic : topics) {
                long at = Millis.atOrBefore(topic.lastAt());
                session.update(HEAR, topic.topic(), topic.messages(), at, topic.sample());
            }
            Bound.keepNewest(session, "heard_topic", "topic", MOST_TOPICS);
            return topics.size();
        });
    }

    @Override
    public List<HeardTopic> heardSince(Instant instant) {
        return database.list(
                "reading the topics heard",
                "SELECT topic, messages, last_at, sample FROM heard_topic WHERE last_at >= ? ORDER BY topic",
                SqliteQuarantine::topic,
                Millis.atOrAfter(instant));
    }

    private static Quarantined message(ResultSet row) throws SQLException {
        Instant arrivedAt = Instant.ofEpochMilli(row.getLong(1));
        return new Quarantined(arrivedAt, row.getString(2), Payload.of(row.getBytes(3)), row.getString(4));
    }

    private static HeardTopic topic(ResultSet row) throws SQLException {
        return new HeardTopic(row.getString(1), row.getLong(2), Instant.ofEpochMilli(row.getLong(3)), row.getString(4));
    }
}
