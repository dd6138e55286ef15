package bagward.store;

import bagward.climate.Span;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;

/** Whole store files: looked through, copied while a station runs, and put back. */
public final class StoreFiles {
    private static final List<String> BESIDE = List.of("", "-wal", "-shm");

    private StoreFiles() {}

    /**
     * Looks through a store file for damage, and counts what it holds. A station may be running on it. Takes seconds for
     * each GB.
     *
     * @throws StoreException if it is missing, no store of Bagward, or so damaged that nothing can be read
     */
    public static StoreReport inspect(Path store) {
        refuseMissing(store);
        try (Session session = Connector.to(store).reader()) {
            Schema.refuseForeign(store, session);
            int version = (int) Schema.version(session);
            Optional<String> damage = damage(session);
            if (version == 0 || damage.isPresent()) {
                return new StoreReport(Files.size(store), version, damage, 0, Optional.empty(), 0);
            }
            return new StoreReport(
                    Files.size(store),
                    version,
                    damage,
                    session.number("SELECT count(*) FROM reading"),
                    time(session),
                    session.number("SELECT count(*) FROM register_change"));
        } catch (SQLException e) {
            throw Trouble.explain(store, "looking it through", e);
        } catch (IOException e) {
            throw unreadable(store, e);
        }
    }

    /** Some damage ends the check itself, which then says so by an error. */
    private static Optional<String> damage(Session session) throws SQLException {
        try {
            String found = String.join("; ", session.list("PRAGMA integrity_check", row -> row.getString(1)));
            return found.equals("ok") ? Optional.empty() : Optional.of(found);
        } catch (SQLException e) {
            if (Trouble.isDamage(e)) {
                return Optional.of(String.valueOf(e.getMessage()));
            }
            throw e;
        }
    }

    private static Optional<Span> time(Session session) throws SQLException {
        return session.first(
                "SELECT min(measured_at), max(measured_at) FROM reading HAVING count(*) > 0",
                row -> new Span(Instant.ofEpochMilli(row.getLong(1)), Instant.ofEpochMilli(row.getLong(2))));
    }

    /**
     * Copies a store as it is at one instant, though a station may be running on it, which is not held up. The copy is
     * looked through, and stands under its name only once it is whole and on disk.
     *
     * @param store the store
     * @param copy name of the copy; there must be no such file yet
     * @param written told from time to time how many bytes of the copy are written
     * @return what the copy holds
     * @throws StoreException if the copy exists, cannot be written, or is damaged as the store is
     */
    public static StoreReport copy(Path store, Path copy, LongConsumer written) {
        refuseMissing(store);
        refuseExisting(copy);
        Path part = copy.resolveSibling(copy.getFileName() + ".part");
        try {
            Files.createDirectories(copy.toAbsolutePath().getParent());
            Files.deleteIfExists(part);
            vacuumInto(store, part, written);
            StoreReport report = sound(part);
            place(part, copy);
            return report;
        } catch (IOException e) {
            throw new StoreException(
                    "backup " + copy + " cannot be written (" + e.getMessage()
                            + "): give a folder with room and the right to" + " write it",
                    e);
        } finally {
            deleteQuietly(part);
        }
    }

    private static void vacuumInto(Path store, Path part, LongConsumer written) {
        Growth growth = Growth.watch(part, written);
        try (Session session = Connector.to(store).reader()) {
            Schema.refuseForeign(store, session);
            session.update("PRAGMA query_only = OFF");
            session.update("VACUUM INTO ?", part.toString());
        } catch (SQLException e) {
            throw Trouble.explain(store, "copying it to " + part, e);
        } finally {
            growth.close();
        }
    }

    /**
     * Puts a copy back in place of a store. The store must not be in use. What stands in its place is not deleted but
     * moved aside.
     *
     * @param copy the copy; it stays
     * @param store where the station looks for its store
     * @param replace whether a store that is there may be moved aside
     * @param now for the name of what is moved aside
     * @return where the store that was there is now; empty if there was none
     * @throws StoreException if the copy is damaged, foreign or newer, the store is in use, or there is one and it may not be
     *     replaced; nothing is changed then
     */
    public static Optional<Path> restore(Path copy, Path store, boolean replace, Instant now) {
        StoreReport report = sound(copy);
        if (report.version() > Migrations.newest()) {
            throw Schema.newer(copy, report.version());
        }
        StoreLock lock = StoreLock.take(store);
        try {
            if (Files.exists(store) && !replace) {
                throw new StoreException(
                        "store " + store + " exists and was left alone: say --replace to put the copy in its"
                                + " place; what is there is moved aside, not deleted");
            }
            return swap(copy, store, now);
        } catch (IOException e) {
            throw new StoreException(
                    "store " + store + " cannot be restored (" + e.getMessage()
                            + "): give this user the right to write its folder, and room for the copy",
                    e);
        } finally {
            lock.close();
        }
    }

    private static Optional<Path> swap(Path copy, Path store, Instant now) throws IOException {
        Path part = store.resolveSibling(store.getFileName() + ".part");
        try {
            Files.copy(copy, part, StandardCopyOption.REPLACE_EXISTING);
            Optional<Path> aside = Optional.empty();
            if (Files.exists(store)) {
                aside = Optional.of(aside(store, now));
            }
            place(part, store);
            return aside;
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** The log goes with its file: each without the other is damaged. */
    private static Path aside(Path store, Instant now) throws IOException {
        String name = store.getFileName() + ".aside-" + now.toEpochMilli();
        for (String ending : BESIDE) {
            Path file = store.resolveSibling(store.getFileName() + ending);
            if (Files.exists(file)) {
                Files.move(file, store.resolveSibling(name + ending));
            }
        }
        return store.resolveSibling(name);
    }

    private static StoreReport sound(Path file) {
        StoreReport report = inspect(file);
        if (report.damage().isPresent()) {
            throw new StoreException("store " + file + " is damaged ("
                    + report.damage().get() + "): use an older backup, or report this if there is none");
        }
        return report;
    }

    private static void place(Path part, Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
        Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
        try (FileChannel folder = FileChannel.open(file.toAbsolutePath().getParent(), StandardOpenOption.READ)) {
            folder.force(true);
        }
    }

    private static void refuseMissing(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new StoreException("store " + file + " is missing: give the path of a store or of a backup of one");
        }
    }

    private static void refuseExisting(Path file) {
        if (Files.exists(file)) {
            throw new StoreException("backup " + file + " exists and was left alone: give another name");
        }
    }

    private static StoreException unreadable(Path file, IOException e) {
        return new StoreException("store " + file + " cannot be read: give this user the right to read it", e);
    }

    private static void deleteQuietly(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            org.slf4j.LoggerFactory.getLogger(StoreFiles.class).warn("{} could not be deleted", file, e);
        }
    }
}
