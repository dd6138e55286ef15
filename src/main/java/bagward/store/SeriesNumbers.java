package bagward.store;

import bagward.climate.SeriesId;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;

/** The numbers by which tables call series, inside a transaction; a new series gets one. */
final class SeriesNumbers {
    private static final String NAME =
            "INSERT INTO series (sensor, quantity, unit) VALUES (?, ?, ?) ON CONFLICT DO NOTHING";

    private static final String NUMBER = "SELECT id FROM series WHERE sensor = ? AND quantity = ?";

    private final Session session;
    private final Map<SeriesId, Long> known = new HashMap<>();

    SeriesNumbers(Session session) {
        this.session = session;
    }

    long of(SeriesId series) throws SQLException {
        Long number = known.get(series);
        if (number == null) {
            number = find(series);
            known.put(series, number);
        }
        return number;
    }

    private long find(SeriesId series) throws SQLException {
        String sensor = series.sensor().value();
        String quantity = series.quantity().word();
        session.update(NAME, sensor, quantity, series.quantity().unitCode());
        return session.number(NUMBER, sensor, quantity);
    }
}
