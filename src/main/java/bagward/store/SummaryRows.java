package bagward.store;

import bagward.climate.Summary;
import java.sql.SQLException;

/** The summaries of one day on their way into the tables, inside a transaction. */
final class SummaryRows {
    private static final String COLUMNS = "readings, mean, minimum, maximum, covered";

    private static final String TEN = "INSERT INTO summary_ten_minutes (series, from_at, " + COLUMNS
            + ") VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING";

    private static final String DAY = "INSERT INTO summary_day (series, day, from_at, to_at, " + COLUMNS
            + ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING";

    private final Session session;
    private final SeriesDay of;
    private final long series;
    private final boolean whole;

    /** @param whole whether what is there of the day is replaced; otherwise only what is missing is added */
    SummaryRows(Session session, SeriesDay of, boolean whole) throws SQLException {
        this.session = session;
        this.of = of;
        this.series = new SeriesNumbers(session).of(of.series());
        this.whole = whole;
    }

    void put(SummaryStore.Result result) throws SQLException {
        if (whole) {
            clear(result);
        }
        for (Summary ten : result.tenMinutes()) {
            session.update(
                    TEN,
                    series,
                    ten.span().from().toEpochMilli(),
                    ten.readings(),
                    ten.mean(),
                    ten.minimum(),
                    ten.maximum(),
                    ten.covered().toMillis());
        }
        if (result.day().isPresent()) {
            putDay(result.day().get());
        }
    }

    private void clear(SummaryStore.Result result) throws SQLException {
        session.update(
                "DELETE FROM summary_ten_minutes WHERE series = ? AND from_at >= ? AND from_at < ?",
                series,
                result.reach().from().toEpochMilli(),
                result.reach().to().toEpochMilli());
        session.update(
                "DELETE FROM summary_day WHERE series = ? AND day = ?",
                series,
                of.day().toEpochDay());
    }

    private void putDay(Summary day) throws SQLException {
        session.update(
                DAY,
                series,
                of.day().toEpochDay(),
                day.span().from().toEpochMilli(),
                day.span().to().toEpochMilli(),
                day.readings(),
                day.mean(),
                day.minimum(),
                day.maximum(),
                day.covered().toMillis());
    }
}
