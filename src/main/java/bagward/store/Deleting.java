package bagward.store;

import java.sql.SQLException;

/** Deletes some of the oldest readings, inside a transaction, and gives pages that got free back to the disk. */
final class Deleting {
    /** Pages given back after each step; a few more than one step frees, so that those of before go too. */
    private static final int PAGES = 400;

    private static final String SERIES = "SELECT id FROM series ORDER BY id";

    // The time of the first row that stays: the one after `most` rows, or the first at `before`.
    private static final String DELETE = "DELETE FROM reading WHERE series = ? AND measured_at < min(?, coalesce("
            + "(SELECT measured_at FROM reading WHERE series = ? ORDER BY measured_at LIMIT 1 OFFSET ?), ?))";

    private final Session session;
    private final long before;

    Deleting(Session session, long before) {
        this.session = session;
        this.before = before;
    }

    /** How many went. */
    int delete(int most) throws SQLException {
        int gone = 0;
        for (long series : session.list(SERIES, row -> row.getLong(1))) {
            if (gone < most) {
                gone += session.update(DELETE, series, before, series, most - gone, before);
            }
        }
        if (gone > 0) {
            giveBack();
        }
        return gone;
    }

    /** The driver takes one step of a statement without columns, and each step of this one frees one page. */
    private void giveBack() throws SQLException {
        long free = Math.min(PAGES, session.number("PRAGMA freelist_count"));
        for (long i = 0; i < free; i++) {
            session.step("PRAGMA incremental_vacuum");
        }
    }
}
