package bagward.store;

import bagward.climate.Reading;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationVersion;

/** Stores as older versions left them: only the first migrations ran. */
final class OldStores {
    private OldStores() {}

    /** A store of a version with readings in it, closed. */
    static void version(int version, Path file, List<Reading> readings) throws SQLException {
        Connector connector = Connector.to(file);
        try (Session session = connector.writer()) {
            session.update("PRAGMA application_id = " + 0x42475744);
        }
        Flyway.configure()
                .dataSource(connector.address(), null, null)
                .table("flyway_schema_history")
                .resourceProvider(new Migrations())
                .locations(new String[0])
                .target(MigrationVersion.fromVersion(Integer.toString(version)))
                .load()
                .migrate();
        try (Session session = connector.writer()) {
            session.begin();
            new Appending(session, Samples.START).append(readings);
            session.commit();
        }
    }
}
