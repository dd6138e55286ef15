package bagward.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Backup, restore and upgrade of whole store files. */
class StoreFilesTest {
    private final Path folder;
    private final Path file;
    private final Path copy;

    StoreFilesTest(@TempDir Path folder) {
        this.folder = folder;
        file = folder.resolve("bagward.db");
        copy = folder.resolve("copies").resolve("one.db");
    }

    @Test
    void a_copy_made_while_readings_are_stored_holds_whole_batches_and_the_writer_goes_on() {
        AtomicBoolean stop = new AtomicBoolean();
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            stores.readings().append(Samples.minutes(0, 20_000));
            CompletableFuture<Integer> writing = CompletableFuture.supplyAsync(() -> write(stores, stop));
            StoreReport report = StoreFiles.copy(file, copy, written -> {});
            stop.set(true);
            int batches = writing.join();
            assertTrue(batches > 0);
            assertEquals(0, report.readings() % 50, report + " has part of a batch");
            assertTrue(report.readings() >= 20_000 && report.readings() <= 20_000 + 50L * batches, report.toString());
            assertEquals(20_000 + 50 * batches, all(stores).size());
        }
        try (SqliteStores copied = SqliteStores.open(copy, Samples.CLOCK)) {
            assertEquals(StoreFiles.inspect(copy).readings(), all(copied).size());
        }
    }

    private static int write(SqliteStores stores, AtomicBoolean stop) {
        int batches = 0;
        while (!stop.get() || batches == 0) {
            stores.readings().append(Samples.minutes(20_000 + 50 * batches, 50));
            batches++;
        }
        return batches;
    }

    @Test
    void a_copy_is_never_written_over() throws IOException {
        SqliteStores.open(file, Samples.CLOCK).close();
        Files.createDirectories(copy.getParent());
        Files.writeString(copy, "mine");
        refused("exists and was left alone: give another name", () -> StoreFiles.copy(file, copy, w -> {}));
        assertEquals("mine", Files.readString(copy));
    }

    @Test
    void a_store_that_is_missing_or_of_another_program_is_neither_copied_nor_inspected() throws SQLException {
        refused("is missing", () -> StoreFiles.copy(file, copy, w -> {}));
        refused("is missing", () -> StoreFiles.inspect(file));
        try (Session theirs = Connector.to(file).writer()) {
            theirs.update("CREATE TABLE theirs (x INTEGER)");
        }
        refused("is a database of another program", () -> StoreFiles.inspect(file));
        refused("is a database of another program", () -> StoreFiles.copy(file, copy, w -> {}));
        assertFalse(Files.exists(copy));
    }

    @Test
    void damage_is_found_and_a_damaged_copy_is_not_restored() throws IOException {
        stored(file, Samples.minutes(0, 20_000));
        byte[] bytes = Files.readAllBytes(file);
        byte[] noise = new byte[8_192];
        new Random(3).nextBytes(noise);
        System.arraycopy(noise, 0, bytes, bytes.length / 2, noise.length);
        Files.createDirectories(copy.getParent());
        Files.write(copy, bytes);
        assertTrue(StoreFiles.inspect(copy).damage().isPresent());
        byte[] before = Files.readAllBytes(file);
        refused("is damaged", () -> StoreFiles.restore(copy, file, true, Samples.START));
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void restoring_brings_back_what_was_copied_and_keeps_what_was_there() {
        List<Reading> first = Samples.minutes(0, 100);
        stored(file, first);
        StoreFiles.copy(file, copy, w -> {});
        stored(file, Samples.minutes(100, 100));
        Optional<Path> aside = StoreFiles.restore(copy, file, true, Samples.START);
        assertEquals(first, readings(file));
        assertEquals(200, readings(aside.orElseThrow()).size());
        assertTrue(Files.exists(copy));
    }

    @Test
    void a_store_in_use_or_there_without_leave_is_not_replaced() {
        stored(file, Samples.minutes(0, 10));
        StoreFiles.copy(file, copy, w -> {});
        refused("say --replace", () -> StoreFiles.restore(copy, file, false, Samples.START));
        try (SqliteStores running = SqliteStores.open(file, Samples.CLOCK)) {
            refused("is in use", () -> StoreFiles.restore(copy, file, true, Samples.START));
            assertEquals(10, all(running).size());
        }
    }

    @Test
    void an_older_store_is_copied_before_it_is_upgraded() throws SQLException {
        List<Reading> old = Samples.minutes(0, 500);
        OldStores.version(1, file, old);
        assertEquals(old, readings(file));
        Path saved = folder.resolve("bagward.db.version-1");
        StoreReport report = StoreFiles.inspect(saved);
        assertEquals(1, report.version());
        assertEquals(500, report.readings());
        assertEquals(Migrations.newest(), StoreFiles.inspect(file).version());
    }

    @Test
    void a_store_that_cannot_be_copied_before_its_upgrade_stays_as_it_is() throws SQLException, IOException {
        OldStores.version(1, file, Samples.minutes(0, 500));
        Files.createDirectories(folder.resolve("bagward.db.version-1.part").resolve("in-the-way"));
        refused(
                "cannot be written",
                () -> SqliteStores.open(file, Samples.CLOCK).close());
        assertEquals(1, StoreFiles.inspect(file).version());
    }

    private static void refused(String words, Runnable act) {
        StoreException refusal = assertThrows(StoreException.class, act::run);
        assertTrue(refusal.toString().contains(words), refusal.toString());
    }

    private static void stored(Path file, List<Reading> readings) {
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            stores.readings().append(readings);
        }
    }

    private static List<Reading> readings(Path file) {
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            return all(stores);
        }
    }

    private static List<Reading> all(SqliteStores stores) {
        return stores.readings().readings(Samples.AIR_HUMIDITY, Instant.MIN, Instant.MAX);
    }
}
