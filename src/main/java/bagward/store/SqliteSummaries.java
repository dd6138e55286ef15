package bagward.store;

import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.climate.Span;
import bagward.climate.Summary;
import bagward.units.Quantity;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Summaries in the tables {@code summary_ten_minutes} and {@code summary_day}. */
final class SqliteSummaries implements SummaryStore {

    private static final String RAISE =
            "INSERT INTO summary_due (series, day, raised) VALUES (?, ?, 1) ON CONFLICT DO UPDATE SET raised = raised + 1";

    private static final String DUE = "SELECT sensor, quantity, day, raised FROM summary_due JOIN series ON id = series"
            + " ORDER BY day, series LIMIT ?";

    private static final String SERIES = " WHERE series = (SELECT id FROM series WHERE sensor = ? AND quantity = ?)";

    private static final String TEN = "SELECT from_at, from_at + 600000, readings, mean, minimum, maximum, covered"
            + " FROM summary_ten_minutes" + SERIES + " AND from_at >= ? AND from_at < ? ORDER BY from_at";

    private static final String DAYS = "SELECT from_at, to_at, readings, mean, minimum, maximum, covered"
            + " FROM summary_day" + SERIES + " AND day >= ? AND day < ? ORDER BY day";

    private static final String SINCE = "SELECT since_at FROM readings_kept";

    private final Database database;

    SqliteSummaries(Database database) {
        this.database = database;
    }

    @Override
    public void raise(Collection<SeriesDay> days) {
        database.write("noting " + days.size() + " days to sum up", session -> {
            SeriesNumbers numbers = new SeriesNumbers(session);
            for (SeriesDay day : days) {
                session.update(RAISE, numbers.of(day.series()), day.day().toEpochDay());
            }
            return days.size();
        });
    }

    @Override
    public List<Due> due(int most) {
        return database.list("reading the days to sum up", DUE, SqliteSummaries::due, most);
    }

    @Override
    public Optional<LocalDate> oldestDue() {
        return database.read(
                "reading the oldest day to sum up",
                session -> session.first(
                        "SELECT day FROM summary_due ORDER BY day LIMIT 1",
                        row -> LocalDate.ofEpochDay(row.getLong(1))));
    }

    @Override
    public void put(Due due, Result result) {
        database.write("keeping the summaries of " + due.day(), session -> {
            boolean whole = result.reach().from().toEpochMilli() >= since(session);
            new SummaryRows(session, due.day(), whole).put(result);
            long series = new SeriesNumbers(session).of(due.day().series());
            return session.update(
                    "DELETE FROM summary_due WHERE series = ? AND day = ? AND raised = ?",
                    series,
                    due.day().day().toEpochDay(),
                    due.raised());
        });
    }

    @Override
    public List<Summary> tenMinutes(SeriesId series, Instant from, Instant to) {
        return summaries(series, TEN, Millis.atOrAfter(from), Millis.atOrAfter(to));
    }

    @Override
    public List<Summary> days(SeriesId series, LocalDate from, LocalDate to) {
        return summaries(series, DAYS, from.toEpochDay(), to.toEpochDay());
    }

    private List<Summary> summaries(SeriesId series, String sql, long from, long to) {
        return database.list(
                "reading summaries of " + series,
                sql,
                SqliteSummaries::summary,
                series.sensor().value(),
                series.quantity().word(),
                from,
                to);
    }

    @Override
    public Instant keptSince() {
        long since = database.read("reading how far back readings are kept", SqliteSummaries::since);
        return since == Long.MIN_VALUE ? Instant.MIN : Instant.ofEpochMilli(since);
    }

    @Override
    public void keepSince(Instant instant) {
        database.write(
                "noting how far back readings are kept",
                session -> session.update(
                        "INSERT INTO readings_kept (only_row, since_at) VALUES (1, ?)"
                                + " ON CONFLICT DO UPDATE SET since_at = max(since_at, excluded.since_at)",
                        Millis.atOrBefore(instant)));
    }

    private static long since(Session session) throws SQLException {
        return session.first(SINCE, row -> row.getLong(1)).orElse(Long.MIN_VALUE);
    }

    private static Due due(ResultSet row) throws SQLException {
        String word = row.getString(2);
        Quantity quantity = Arrays.stream(Quantity.values())
                .filter(q -> q.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new SQLException("unknown quantity " + word));
        SeriesId series = new SeriesId(new SensorId(row.getString(1)), quantity);
        return new Due(new SeriesDay(series, LocalDate.ofEpochDay(row.getLong(3))), row.getLong(4));
    }

    private static Summary summary(ResultSet row) throws SQLException {
        Span span = new Span(Instant.ofEpochMilli(row.getLong(1)), Instant.ofEpochMilli(row.getLong(2)));
        return new Summary(
                span,
                row.getLong(3),
                row.getDouble(4),
                row.getDouble(5),
                row.getDouble(6),
                Duration.ofMillis(row.getLong(7)));
    }
}
