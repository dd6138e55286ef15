package bagward.store;

import bagward.climate.Reading;
import bagward.climate.ReadingFlag;
import bagward.climate.SeriesId;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Readings in the table {@code reading}. */
final class SqliteReadings implements ReadingStore {
    private static final String SELECT = "SELECT measured_at, value, flags FROM reading"
            + " WHERE series = (SELECT id FROM series WHERE sensor = ? AND quantity = ?)";

    private static final String RANGE = SELECT + " AND measured_at >= ? AND measured_at < ? ORDER BY measured_at";

    private static final String NEWEST = SELECT + " AND measured_at <= ? ORDER BY measured_at DESC LIMIT 1";

    private final Database database;
    private final Clock clock;

    SqliteReadings(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    @Override
    public Receipt append(List<Reading> batch) {
        if (batch.isEmpty()) {
            return new Receipt(0, 0, 0);
        }
        Instant now = clock.instant();
        return database.write(
                "storing " + batch.size() + " readings", session -> new Appending(session, now).append(batch));
    }

    @Override
    public List<Reading> readings(SeriesId series, Instant from, Instant to) {
        return database.list(
                "reading " + series,
                RANGE,
                row(series),
                series.sensor().value(),
                series.quantity().word(),
                Millis.atOrAfter(from),
                Millis.atOrAfter(to));
    }

    @Override
    public Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
        return database.read(
                "reading the newest of " + series,
                session -> session.first(
                        NEWEST,
                        row(series),
                        series.sensor().value(),
                        series.quantity().word(),
                        Millis.atOrBefore(atOrBefore)));
    }

    @Override
    public int deleteBefore(Instant before, int most) {
        long end = Millis.atOrAfter(before);
        return database.write("deleting old readings", session -> new Deleting(session, end).delete(most));
    }

    private static Session.Row<Reading> row(SeriesId series) {
        return row -> new Reading(
                series, Instant.ofEpochMilli(row.getLong(1)), row.getDouble(2), ReadingFlag.ofBits(row.getInt(3)));
    }
}
