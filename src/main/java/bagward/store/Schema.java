package bagward.store;

import java.nio.file.Files;
import java.sql.SQLException;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/** Brings a store file to the newest version of its schema, and refuses files that are not ours or newer than we. */
final class Schema {
    /** "BGWD" in ASCII, by which a store is told from other SQLite files. */
    private static final long APPLICATION_ID = 0x42475744;

    private static final String HISTORY = "flyway_schema_history";

    private Schema() {}

    /**
     * Checks and migrates.
     *
     * @throws StoreException if the file is damaged, foreign or newer; it is left as it was
     */
    static void bringUpToDate(Connector connector) {
        try {
            if (isEmpty(connector)) {
                claim(connector);
            } else {
                refuseForeignAndNewer(connector);
            }
            flyway(connector).migrate();
        } catch (SQLException e) {
            throw Trouble.explain(connector.file(), "opening it", e);
        } catch (FlywayException e) {
            throw explain(connector, e);
        }
    }

    /**
     * Checks that a file can be read as it is.
     *
     * @throws StoreException if it is missing, damaged, foreign, or its schema is not the newest
     */
    static void refuseUnlessCurrent(Connector connector) {
        if (!Files.isRegularFile(connector.file())) {
            throw new StoreException(
                    "store " + connector.file() + " is not there: name the folder of a station that ran");
        }
        try (Session session = connector.reader()) {
            refuseForeignAndNewer(connector);
            long version = session.number("SELECT max(CAST(version AS INTEGER)) FROM " + HISTORY);
            if (version < Migrations.newest()) {
                throw new StoreException(
                        "store " + connector.file()
                                + " was last used by an older Bagward: run this one on it once, so that it is brought up to date");
            }
        } catch (SQLException e) {
            throw Trouble.explain(connector.file(), "opening it", e);
        }
    }

    private static boolean isEmpty(Connector connector) throws SQLException {
        try (Session session = connector.reader()) {
            return session.number("SELECT count(*) FROM sqlite_schema") == 0;
        }
    }

    /** Done before the first table is made, so that a start cut short leaves a file that is known as ours. */
    private static void claim(Connector connector) throws SQLException {
        try (Session session = connector.writer()) {
            session.update("PRAGMA application_id = " + APPLICATION_ID);
        }
    }

    private static void refuseForeignAndNewer(Connector connector) throws SQLException {
        try (Session session = connector.reader()) {
            if (session.number("PRAGMA application_id") != APPLICATION_ID) {
                throw new StoreException("store " + connector.file()
                        + " is a database of another program and was left alone: name another file");
            }
            refuseNewer(connector, session);
        }
    }

    private static void refuseNewer(Connector connector, Session session) throws SQLException {
        boolean begun = session.number("SELECT count(*) FROM sqlite_schema WHERE name = '" + HISTORY + "'") > 0;
        long version = begun ? session.number("SELECT max(CAST(version AS INTEGER)) FROM " + HISTORY) : 0;
        if (version > Migrations.newest()) {
            throw new StoreException("store " + connector.file() + " has schema version " + version
                    + ", this Bagward knows versions up to " + Migrations.newest()
                    + ": use the newer Bagward that wrote it");
        }
    }

    private static Flyway flyway(Connector connector) {
        return Flyway.configure()
                .dataSource(connector.address(), null, null)
                .table(HISTORY)
                .resourceProvider(new Migrations())
                .locations(new String[0])
                .load();
    }

    private static StoreException explain(Connector connector, FlywayException e) {
        if (e.getCause() instanceof SQLException cause) {
            return Trouble.explain(connector.file(), "bringing its schema up to date", cause);
        }
        return new StoreException(
                "store " + connector.file()
                        + ": its schema could not be brought up to date; restore it from a backup or report this ("
                        + e.getMessage() + ")",
                e);
    }
}
