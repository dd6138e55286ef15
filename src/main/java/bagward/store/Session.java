package bagward.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One connection with its prepared statements; used by one thread at a time. */
final class Session implements AutoCloseable {
    private final Connection connection;
    private final Map<String, PreparedStatement> prepared = new HashMap<>();

    Session(Connection connection) {
        this.connection = connection;
    }

    /** Begins a transaction. */
    void begin() throws SQLException {
        connection.setAutoCommit(false);
    }

    /** Ends it; all of it is on disk when this returns. JDBC commits when automatic commits are switched on. */
    void commit() throws SQLException {
        connection.setAutoCommit(true);
    }

    /** Runs a statement and says how many rows it changed. */
    int update(String sql, Object... values) throws SQLException {
        return bound(sql, values).executeUpdate();
    }

    /** Takes the first step of a statement that answers nothing. */
    void step(String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    /** Every row of a query. */
    <T> List<T> list(String sql, Row<T> row, Object... values) throws SQLException {
        List<T> rows = new ArrayList<>();
        try (ResultSet found = bound(sql, values).executeQuery()) {
            while (found.next()) {
                rows.add(row.read(found));
            }
        }
        return rows;
    }

    /** The first row of a query. */
    <T> Optional<T> first(String sql, Row<T> row, Object... values) throws SQLException {
        try (ResultSet found = bound(sql, values).executeQuery()) {
            return found.next() ? Optional.of(row.read(found)) : Optional.empty();
        }
    }

    /** The first column of the only row of a query. */
    long number(String sql, Object... values) throws SQLException {
        return first(sql, row -> row.getLong(1), values).orElseThrow(() -> new SQLException("no row: " + sql));
    }

    private PreparedStatement bound(String sql, Object... values) throws SQLException {
        PreparedStatement statement = prepared.get(sql);
        if (statement == null) {
            statement = connection.prepareStatement(sql);
            prepared.put(sql, statement);
        }
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, values[i]);
        }
        return statement;
    }

    /** Closes the connection; an open transaction is undone. */
    @Override
    public void close() throws SQLException {
        connection.close();
    }

    /** Reads one row. */
    interface Row<T> {
        T read(ResultSet row) throws SQLException;
    }
}
