package bagward.store;

import bagward.message.ChannelName;
import bagward.message.Message;
import bagward.message.Parcel;
import bagward.message.Sent;
import bagward.message.Told;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The outbox in the tables {@code parcel} (what is sent), {@code delivery} (how it stands with each channel), {@code told}
 * (which states of alarms were told to whom) and {@code journal_mark}.
 */
final class SqliteOutbox implements OutboxStore {
    private static final String JOURNAL_READER = "outbox";

    private static final String COLUMNS = """
            SELECT d.parcel, p.document, d.channel, d.state, d.tries, d.next_try, d.changed_at, d.trouble
            FROM delivery d JOIN parcel p ON p.number = d.parcel""";

    private static final String CHANGE = """
            UPDATE delivery SET state = ?, tries = ?, next_try = ?, changed_at = ?, trouble = ?
            WHERE parcel = ? AND channel = ? AND state = 'waiting'""";

    private final Database database;

    SqliteOutbox(Database database) {
        this.database = database;
    }

    @Override
    public void put(List<Message> messages) {
        if (messages.isEmpty()) {
            return;
        }
        database.write("putting " + messages.size() + " messages into the outbox", session -> {
            for (Message message : messages) {
                if (Posting.add(session, new Parcel.Letter(message), message.to())) {
                    Posting.remember(session, message);
                }
            }
            return messages.size();
        });
    }

    @Override
    public Sent sent() {
        return database.read("reading what was sent", session -> {
            Set<String> ids = new HashSet<>(session.list("SELECT id FROM parcel", row -> row.getString(1)));
            Map<Told, Instant> told = new HashMap<>();
            session.list("SELECT person, rule, subject, raised_at, news, number, told_at FROM told", Posting::told)
                    .forEach(entry -> told.put(entry.getKey(), entry.getValue()));
            return new Sent(ids, told);
        });
    }

    @Override
    public void putTrial(Parcel.Trial trial) {
        database.write(
                "putting a trial into the outbox", session -> Posting.add(session, trial, List.of(trial.channel())));
    }

    @Override
    public int takeJournal(Set<ChannelName> listeners, Instant now) {
        long newest = database.number("reading the alarm journal", "SELECT coalesce(max(id), 0) FROM alarm_event");
        Optional<Long> mark = mark();
        if (mark.filter(taken -> taken == newest).isPresent()) {
            return 0;
        }
        return database.write("taking the alarm journal into the outbox", session -> {
            int put = 0;
            if (mark.isPresent() && !listeners.isEmpty()) {
                for (Parcel.Change change : changes(session, mark.get(), newest)) {
                    put += Posting.add(session, change, listeners) ? 1 : 0;
                }
            }
            session.update("""
                    INSERT INTO journal_mark (reader, event) VALUES (?, ?)
                    ON CONFLICT (reader) DO UPDATE SET event = excluded.event""", JOURNAL_READER, newest);
            return put;
        });
    }

    private Optional<Long> mark() {
        return database.read(
                "reading how far the journal was taken",
                session -> session.first(
                        "SELECT event FROM journal_mark WHERE reader = ?", row -> row.getLong(1), JOURNAL_READER));
    }

    private static List<Parcel.Change> changes(Session session, long after, long upTo) throws SQLException {
        return session.list(
                "SELECT id, document FROM alarm_event WHERE id > ? AND id <= ? ORDER BY id",
                row -> new Parcel.Change(row.getLong(1), AlarmJson.readEvent(row.getString(2))),
                after,
                upTo);
    }

    @Override
    public List<Delivery> waiting(ChannelName channel, int most) {
        return database.list(
                "reading what waits for " + channel,
                COLUMNS + " WHERE d.channel = ? AND d.state = 'waiting' ORDER BY d.parcel LIMIT ?",
                SqliteOutbox::delivery,
                channel.value(),
                most);
    }

    @Override
    public long waitingCount(ChannelName channel) {
        return database.read(
                "counting what waits for " + channel,
                session -> session.number(
                        "SELECT count(*) FROM delivery WHERE channel = ? AND state = 'waiting'", channel.value()));
    }

    @Override
    public List<Delivery> newest(int most) {
        return database.list(
                "reading the deliveries",
                COLUMNS + " ORDER BY d.parcel DESC, d.channel LIMIT ?",
                SqliteOutbox::delivery,
                most);
    }

    @Override
    public Optional<Delivery> lastHandedOver(ChannelName channel) {
        return database.read(
                "reading the deliveries of " + channel,
                session -> session.first(
                        COLUMNS
                                + " WHERE d.channel = ? AND d.state = 'handed-over' ORDER BY d.changed_at DESC, d.parcel DESC LIMIT 1",
                        SqliteOutbox::delivery,
                        channel.value()));
    }

    @Override
    public Optional<Parcel> find(long number) {
        return database.read(
                "reading a parcel",
                session -> session.first(
                        "SELECT document FROM parcel WHERE number = ?",
                        row -> ParcelJson.read(row.getString(1)),
                        number));
    }

    @Override
    public void handedOver(Delivery delivery, Instant at) {
        change(delivery, Delivery.State.HANDED_OVER, delivery.tries(), at, at, "");
    }

    @Override
    public void failed(Delivery delivery, Instant at, Instant nextTry, String trouble) {
        change(delivery, Delivery.State.WAITING, delivery.tries() + 1, at, nextTry, trouble);
    }

    @Override
    public void givenUp(Delivery delivery, Instant at, String why) {
        change(delivery, Delivery.State.GIVEN_UP, delivery.tries(), at, at, why);
    }

    private void change(
            Delivery delivery, Delivery.State state, int tries, Instant at, Instant nextTry, String trouble) {
        database.write(
                "noting a delivery",
                session -> session.update(
                        CHANGE,
                        Words.of(state),
                        tries,
                        Millis.atOrAfter(nextTry),
                        Millis.atOrBefore(at),
                        trouble,
                        delivery.number(),
                        delivery.channel().value()));
    }

    @Override
    public int giveUpExcept(Set<ChannelName> there, Instant at) {
        return database.write("giving up what waits for channels that are gone", session -> {
            int gone = 0;
            for (String channel : session.list(
                    "SELECT DISTINCT channel FROM delivery WHERE state = 'waiting'", row -> row.getString(1))) {
                if (there.stream().noneMatch(known -> known.value().equals(channel))) {
                    gone += session.update("""
                            UPDATE delivery SET state = 'given-up', changed_at = ?,
                                trouble = 'the channel is no longer configured'
                            WHERE channel = ? AND state = 'waiting'""", Millis.atOrBefore(at), channel);
                }
            }
            return gone;
        });
    }

    @Override
    public void forgetOld(Instant now) {
        long parcels = Millis.atOrBefore(now.minus(Duration.ofDays(PARCEL_DAYS)));
        long told = Millis.atOrBefore(now.minus(Duration.ofDays(TOLD_DAYS)));
        database.write("forgetting old messages", session -> {
            session.update("DELETE FROM told WHERE told_at < ?", told);
            session.update("""
                    DELETE FROM delivery WHERE state <> 'waiting'
                        AND parcel IN (SELECT number FROM parcel WHERE put_at < ?)""", parcels);
            return session.update(
                    "DELETE FROM parcel WHERE put_at < ? AND number NOT IN (SELECT parcel FROM delivery)", parcels);
        });
    }

    private static Delivery delivery(ResultSet row) throws SQLException {
        return new Delivery(
                row.getLong(1),
                ParcelJson.read(row.getString(2)),
                new ChannelName(row.getString(3)),
                Words.find(Delivery.State.class, row.getString(4)),
                row.getInt(5),
                Instant.ofEpochMilli(row.getLong(6)),
                Instant.ofEpochMilli(row.getLong(7)),
                row.getString(8));
    }
}
