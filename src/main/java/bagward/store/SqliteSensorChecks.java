package bagward.store;

import bagward.climate.SaltCheck;
import bagward.store.KeptCheck.Withdrawal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Checks in the table {@code sensor_check}, each as one document. */
final class SqliteSensorChecks implements SensorCheckStore {
    private static final String ADD =
            "INSERT INTO sensor_check (sensor, checked_at, recorded_at, entered_by, document) VALUES (?, ?, ?, ?, ?)";
    private static final String WITHDRAW =
            "INSERT INTO sensor_check_withdrawn (sensor_check, recorded_at, entered_by, reason)"
                    + " SELECT id, ?, ?, ? FROM sensor_check WHERE id = ? ON CONFLICT DO NOTHING";
    private static final String ALL = "SELECT c.id, c.document, c.entered_by, c.recorded_at,"
            + " w.recorded_at, w.entered_by, w.reason"
            + " FROM sensor_check c LEFT JOIN sensor_check_withdrawn w ON w.sensor_check = c.id ORDER BY c.id";

    private final Database database;

    SqliteSensorChecks(Database database) {
        this.database = database;
    }

    @Override
    public void add(SaltCheck check, String by, Instant recordedAt) {
        database.write(
                "entering the check of a sensor",
                session -> session.update(
                        ADD,
                        check.sensor().value(),
                        Millis.atOrBefore(check.checkedAt()),
                        Millis.atOrBefore(recordedAt),
                        by,
                        SaltCheckJson.write(check)));
    }

    @Override
    public boolean withdraw(long id, Withdrawal withdrawal) {
        return database.write(
                "withdrawing the check of a sensor",
                session -> session.update(
                                WITHDRAW,
                                Millis.atOrBefore(withdrawal.recordedAt()),
                                withdrawal.by(),
                                withdrawal.why(),
                                id)
                        == 1);
    }

    @Override
    public List<KeptCheck> checks() {
        return database.list("reading the checks of sensors", ALL, SqliteSensorChecks::read);
    }

    private static KeptCheck read(ResultSet row) throws SQLException {
        String reason = row.getString(7);
        Optional<Withdrawal> withdrawn = reason == null
                ? Optional.empty()
                : Optional.of(new Withdrawal(Instant.ofEpochMilli(row.getLong(5)), row.getString(6), reason));
        return new KeptCheck(
                row.getLong(1),
                SaltCheckJson.read(row.getString(2)),
                row.getString(3),
                Instant.ofEpochMilli(row.getLong(4)),
                withdrawn);
    }
}
