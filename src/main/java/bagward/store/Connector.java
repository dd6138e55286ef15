package bagward.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.JournalMode;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteConfig.TransactionMode;

/**
 * Opens connections. Every commit is synced to disk before it returns (synchronous FULL), since a message is
 * acknowledged to the broker after it.
 *
 * @param file the database file
 * @param busyMillis how long to wait for another program that holds the file, ms
 * @param prepare what else to do with each new writer
 */
record Connector(Path file, int busyMillis, Preparation prepare) {
    static final int PATIENCE_MILLIS = 5_000;

    /** A connector with nothing else to do. */
    static Connector to(Path file) {
        return new Connector(file, PATIENCE_MILLIS, writer -> {});
    }

    /** A new connection that may write. */
    Session writer() throws SQLException {
        SQLiteConfig config = common();
        config.setJournalMode(JournalMode.WAL);
        config.setSynchronous(SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setTransactionMode(TransactionMode.IMMEDIATE);
        Connection connection = config.createConnection(address());
        try {
            prepare.of(connection);
        } catch (SQLException e) {
            connection.close();
            throw e;
        }
        return new Session(connection);
    }

    /** A new connection to a file that is empty yet: what may only be set before the first page is written. */
    Session first() throws SQLException {
        Session session = new Session(common().createConnection(address()));
        session.update("PRAGMA auto_vacuum = INCREMENTAL");
        return session;
    }

    /** A new connection that cannot change anything. */
    Session reader() throws SQLException {
        Session session = new Session(common().createConnection(address()));
        session.update("PRAGMA query_only = ON");
        return session;
    }

    /** Address of the file for JDBC. */
    String address() {
        return "jdbc:sqlite:" + file;
    }

    private SQLiteConfig common() {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(busyMillis);
        return config;
    }

    /** Prepares a connection. */
    interface Preparation {
        void of(Connection writer) throws SQLException;
    }
}
