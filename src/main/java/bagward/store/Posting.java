package bagward.store;

import bagward.alarm.AlarmKey;
import bagward.alarm.RuleId;
import bagward.message.ChannelName;
import bagward.message.Message;
import bagward.message.Parcel;
import bagward.message.Told;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collection;
import java.util.Map;

/** Parcels on their way into the tables, inside a transaction. */
final class Posting {
    private Posting() {}

    /** Remembers which states a message told. */
    static void remember(Session session, Message message) throws SQLException {
        for (Told told : message.tells()) {
            session.update(
                    """
                    INSERT INTO told (person, rule, subject, raised_at, news, number, told_at)
                    VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""",
                    told.person(),
                    told.alarm().rule().value(),
                    told.alarm().subject().key(),
                    told.raisedAt().toString(),
                    Words.of(told.news()),
                    told.number(),
                    Millis.atOrBefore(message.at()));
        }
    }

    /** Adds a parcel and a delivery for each channel; false if one of its id is there. */
    static boolean add(Session session, Parcel parcel, Collection<ChannelName> to) throws SQLException {
        long at = Millis.atOrBefore(parcel.at());
        int added = session.update(
                "INSERT INTO parcel (id, put_at, document) VALUES (?, ?, ?) ON CONFLICT (id) DO NOTHING",
                parcel.id(),
                at,
                ParcelJson.write(parcel));
        if (added == 0) {
            return false;
        }
        long number = session.number("SELECT number FROM parcel WHERE id = ?", parcel.id());
        for (ChannelName channel : to) {
            session.update("""
                    INSERT INTO delivery (parcel, channel, state, tries, next_try, changed_at, trouble)
                    VALUES (?, ?, 'waiting', 0, ?, ?, '')""", number, channel.value(), at, at);
        }
        return true;
    }

    /** A row of what was told, and when. */
    static Map.Entry<Told, Instant> told(ResultSet row) throws SQLException {
        Told told = new Told(
                row.getString(1),
                new AlarmKey(new RuleId(row.getString(2)), SubjectKey.parse(row.getString(3))),
                Instant.parse(row.getString(4)),
                Words.find(Told.News.class, row.getString(5)),
                row.getInt(6));
        return Map.entry(told, Instant.ofEpochMilli(row.getLong(7)));
    }
}
