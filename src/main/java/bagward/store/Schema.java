package bagward.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Brings a store file to the newest version of its schema, and refuses files that are not ours or newer than we. */
final class Schema {
    /** "BGWD" in ASCII, by which a store is told from other SQLite files. */
    private static final long APPLICATION_ID = 0x42475744;

    private static final String HISTORY = "flyway_schema_history";

    private static final Logger LOG = LoggerFactory.getLogger(Schema.class);

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
                saveBeforeUpgrade(connector);
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
        try (Session session = connector.first()) {
            session.update("PRAGMA application_id = " + APPLICATION_ID);
        }
    }

    private static void refuseForeignAndNewer(Connector connector) throws SQLException {
        try (Session session = connector.reader()) {
            refuseForeign(connector.file(), session);
            long version = version(session);
            if (version > Migrations.newest()) {
                throw newer(connector.file(), version);
            }
        }
    }

    /** @throws StoreException if the file is not marked as ours */
    static void refuseForeign(Path file, Session session) throws SQLException {
        if (session.number("PRAGMA application_id") != APPLICATION_ID) {
            throw new StoreException(
                    "store " + file + " is a database of another program and was left alone: name another file");
        }
    }

    /** Version of the schema; 0 if it was only begun. */
    static long version(Session session) throws SQLException {
        boolean begun = session.number("SELECT count(*) FROM sqlite_schema WHERE name = '" + HISTORY + "'") > 0;
        return begun ? session.number("SELECT coalesce(max(CAST(version AS INTEGER)), 0) FROM " + HISTORY) : 0;
    }

    /** The refusal of a store that a newer program wrote. */
    static StoreException newer(Path file, long version) {
        return new StoreException("store " + file + " has schema version " + version
                + ", this Bagward knows versions up to " + Migrations.newest()
                + ": use the newer Bagward that wrote it");
    }

    /** An older store is copied first, so that the older program can be gone back to. */
    private static void saveBeforeUpgrade(Connector connector) throws SQLException {
        long version;
        try (Session session = connector.reader()) {
            version = version(session);
        }
        if (version == 0 || version == Migrations.newest()) {
            return;
        }
        Path file = connector.file();
        Path copy = file.resolveSibling(file.getFileName() + ".version-" + version);
        if (!Files.exists(copy)) {
            StoreFiles.copy(
                    file, copy, written -> LOG.info("copying the store before its upgrade: {} MB", written >> 20));
            LOG.info("the store of version {} was copied to {} before its upgrade", version, copy);
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
