package bagward.store;

import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;

/** Says in plain words what went wrong with the database and what helps. */
final class Trouble {
    private static final int PRIMARY_CODE = 0xff;

    private Trouble() {}

    /** The error of the database as ours. */
    static StoreException explain(Path file, String what, SQLException e) {
        return new StoreException(
                "store " + file + ": " + what + " failed; " + remedy(e) + " (" + e.getMessage() + ")", e);
    }

    /** Whether the file itself is damaged. */
    static boolean isDamage(SQLException e) {
        return SQLiteErrorCode.getErrorCode(e.getErrorCode() & PRIMARY_CODE) == SQLiteErrorCode.SQLITE_CORRUPT;
    }

    private static String remedy(SQLException e) {
        // Extended codes carry the primary one in their low byte.
        return switch (SQLiteErrorCode.getErrorCode(e.getErrorCode() & PRIMARY_CODE)) {
            case SQLITE_BUSY, SQLITE_LOCKED -> "another program holds the file: close it";
            case SQLITE_FULL -> "the disk is full: free some space";
            case SQLITE_READONLY, SQLITE_PERM, SQLITE_CANTOPEN ->
                "the file cannot be opened for writing: give this user the right to write it and its folder";
            case SQLITE_CORRUPT, SQLITE_NOTADB ->
                "the file is damaged or is no store of Bagward: restore it from a backup or name another file";
            case SQLITE_IOERR ->
                "the disk reports an error: check the disk, then restore from a backup if the file is damaged";
            default -> "nothing was changed: try again, and report it if it stays";
        };
    }
}
