package bagward.store;

import java.sql.SQLException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Keeps a table from growing without limit. */
final class Bound {
    private static final Logger LOG = LoggerFactory.getLogger(Bound.class);

    private Bound() {}

    /** Removes the rows with the oldest {@code last_at} beyond a number of rows, and logs how many went. */
    static void keepNewest(Session session, String table, String key, int most) throws SQLException {
        if (session.number("SELECT count(*) FROM " + table) <= most) {
            return;
        }
        int gone = session.update(
                "DELETE FROM " + table + " WHERE " + key + " IN (SELECT " + key + " FROM " + table
                        + " ORDER BY last_at DESC, " + key + " DESC LIMIT -1 OFFSET ?)",
                most);
        LOG.warn("table {} is full at {} rows: the {} oldest were dropped", table, most, gone);
    }
}
