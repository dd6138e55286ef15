package bagward.store;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmKey;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;

/** Alarms in the table {@code alarm}, their journal in {@code alarm_event}, each as one document. */
final class SqliteAlarms implements AlarmStore {
    private static final String KEEP = "INSERT INTO alarm (rule, subject, document) VALUES (?, ?, ?)";

    private static final String NOTE = "INSERT INTO alarm_event (at, rule, subject, document) VALUES (?, ?, ?, ?)";

    private final Database database;

    SqliteAlarms(Database database) {
        this.database = database;
    }

    @Override
    public AlarmBook loadAlarms() {
        return AlarmBook.of(database.list(
                "reading the alarms", "SELECT document FROM alarm", row -> AlarmJson.readAlarm(row.getString(1))));
    }

    @Override
    public void save(AlarmBook book, List<AlarmEvent> events) {
        database.write("saving the alarms", session -> {
            session.update("DELETE FROM alarm");
            for (Alarm alarm : book.alarms()) {
                add(session, alarm);
            }
            for (AlarmEvent event : events) {
                add(session, event);
            }
            return events.size();
        });
    }

    @Override
    public List<AlarmEvent> newestEvents(int most) {
        return database.list(
                "reading the alarm journal",
                "SELECT document FROM alarm_event ORDER BY id DESC LIMIT ?",
                row -> AlarmJson.readEvent(row.getString(1)),
                most);
    }

    @Override
    public List<AlarmEvent> events(Instant from, Instant to) {
        return database.list(
                "reading the alarm journal",
                "SELECT document FROM alarm_event WHERE at >= ? AND at < ? ORDER BY id",
                row -> AlarmJson.readEvent(row.getString(1)),
                Millis.atOrBefore(from),
                Millis.atOrBefore(to));
    }

    private static void add(Session session, Alarm alarm) throws SQLException {
        AlarmKey key = alarm.key();
        session.update(KEEP, key.rule().value(), key.subject().key(), AlarmJson.write(alarm));
    }

    private static void add(Session session, AlarmEvent event) throws SQLException {
        AlarmKey key = event.key();
        long at = Millis.atOrBefore(event.at());
        session.update(NOTE, at, key.rule().value(), key.subject().key(), AlarmJson.write(event));
    }
}
