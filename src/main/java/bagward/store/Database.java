package bagward.store;

import bagward.store.Session.Row;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.locks.ReentrantLock;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * One SQLite file: one writer at a time, readers beside it. In write-ahead mode readers see the last commit and neither
 * waits for the other.
 */
final class Database implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Database.class);

    private static final int IDLE_READERS = 4;

    private final Path file;
    private final Connector connector;
    private final ReentrantLock writing = new ReentrantLock();
    private final Deque<Session> idleReaders = new ConcurrentLinkedDeque<>();
    private Optional<Session> writer = Optional.empty();
    private volatile boolean closed;

    Database(Path file, Connector connector) {
        this.file = file;
        this.connector = connector;
    }

    /**
     * Does work in one transaction: all of it is on disk when this returns, none of it when it throws. A session that
     * failed is closed, which undoes its transaction in whatever state it is.
     */
    <T> T write(String what, Work<T> work) {
        writing.lock();
        try {
            Session session = writer();
            session.begin();
            T result = work.on(session);
            session.commit();
            return result;
        } catch (SQLException e) {
            dropWriter();
            throw Trouble.explain(file, what, e);
        } catch (RuntimeException | Error e) {
            dropWriter();
            throw e;
        } finally {
            writing.unlock();
        }
    }

    /** Does work that only reads. */
    <T> T read(String what, Work<T> work) {
        Optional<Session> taken = Optional.ofNullable(idleReaders.poll());
        boolean sound = false;
        try {
            refuseIfClosed();
            Session session = taken.isPresent() ? taken.get() : connector.reader();
            taken = Optional.of(session);
            T result = work.on(session);
            sound = true;
            return result;
        } catch (SQLException e) {
            throw Trouble.explain(file, what, e);
        } finally {
            giveBack(taken, sound);
        }
    }

    /** The first column of the only row of a query that only reads. */
    long number(String what, String sql) {
        return read(what, session -> session.number(sql));
    }

    /** Every row of a query that only reads. */
    <T> List<T> list(String what, String sql, Row<T> row, Object... values) {
        return read(what, session -> session.list(sql, row, values));
    }

    private Session writer() throws SQLException {
        refuseIfClosed();
        if (writer.isEmpty()) {
            writer = Optional.of(connector.writer());
        }
        return writer.get();
    }

    private void dropWriter() {
        writer.ifPresent(Database::closeQuietly);
        writer = Optional.empty();
    }

    private void giveBack(Optional<Session> taken, boolean sound) {
        if (taken.isEmpty()) {
            return;
        }
        if (sound && !closed && idleReaders.size() < IDLE_READERS) {
            idleReaders.push(taken.get());
            if (closed) {
                closeReaders();
            }
        } else {
            closeQuietly(taken.get());
        }
    }

    private void refuseIfClosed() {
        if (closed) {
            throw new StoreException("store " + file + " is closed: open it again before use");
        }
    }

    private void closeReaders() {
        for (Session idle = idleReaders.poll(); idle != null; idle = idleReaders.poll()) {
            closeQuietly(idle);
        }
    }

    private static void closeQuietly(Session session) {
        try {
            session.close();
        } catch (SQLException e) {
            LOG.warn("a connection to the store could not be closed", e);
        }
    }

    @Override
    public void close() {
        writing.lock();
        try {
            closed = true;
            dropWriter();
            closeReaders();
        } finally {
            writing.unlock();
        }
    }

    /** Something to do with a session. */
    interface Work<T> {
        T on(Session session) throws SQLException;
    }
}
