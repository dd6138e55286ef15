package bagward.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Opening a store: what is accepted, what is refused and in which words. */
class SqliteStoresTest {
    private final Path file;

    SqliteStoresTest(@TempDir Path folder) {
        file = folder.resolve("data").resolve("bagward.db");
    }

    @Test
    void a_missing_store_is_made_with_its_folder() {
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            assertEquals("ok", stores.checkIntegrity());
        }
        assertTrue(Files.exists(file));
    }

    @Test
    void a_store_that_is_open_cannot_be_opened_again() {
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            assertEquals("ok", stores.checkIntegrity());
            refused("is in use by another running Bagward: stop it first");
        }
        SqliteStores.open(file, Samples.CLOCK).close();
    }

    @Test
    void a_store_of_a_newer_schema_is_refused_and_left_alone() throws SQLException {
        SqliteStores.open(file, Samples.CLOCK).close();
        run("INSERT INTO flyway_schema_history (installed_rank, version, description, type, script, installed_by,"
                + " execution_time, success) VALUES (99, '99', 'later', 'SQL', 'V99__later.sql', 'x', 1, 1)");
        refused("has schema version 99, this Bagward knows versions up to " + Migrations.newest()
                + ": use the newer Bagward that wrote it");
    }

    @Test
    void a_database_of_another_program_is_refused_and_left_alone() throws SQLException, IOException {
        Files.createDirectories(file.getParent());
        run("CREATE TABLE theirs (x INTEGER)");
        byte[] before = Files.readAllBytes(file);
        refused("is a database of another program and was left alone: name another file");
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void a_file_that_is_no_database_is_refused_and_left_alone() throws IOException {
        Files.createDirectories(file.getParent());
        byte[] notes = "Dear diary, the Brassicas flower.".repeat(300).getBytes(StandardCharsets.UTF_8);
        Files.write(file, notes);
        refused("the file is damaged or is no store of Bagward: restore it from a backup or name another file");
        assertArrayEquals(notes, Files.readAllBytes(file));
    }

    @Test
    void a_store_whose_first_pages_are_overwritten_is_refused() throws IOException {
        SqliteStores.open(file, Samples.CLOCK).close();
        byte[] bytes = Files.readAllBytes(file);
        byte[] noise = new byte[4_000];
        new Random(7).nextBytes(noise);
        System.arraycopy(noise, 0, bytes, 100, noise.length);
        Files.write(file, bytes);
        refused("the file is damaged or is no store of Bagward");
    }

    @Test
    void a_folder_in_place_of_the_file_is_refused() throws IOException {
        Files.createDirectories(file);
        refused("the file cannot be opened for writing");
    }

    @Test
    void a_start_that_was_cut_short_before_the_first_table_is_taken_up_again() throws SQLException, IOException {
        Files.createDirectories(file.getParent());
        run("PRAGMA application_id = " + 0x42475744, "CREATE TABLE flyway_schema_history_begun (x INTEGER)");
        run("DROP TABLE flyway_schema_history_begun");
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            stores.readings().append(Samples.minutes(0, 1));
            assertEquals(
                    Samples.minutes(0, 1), stores.readings().readings(Samples.AIR_HUMIDITY, Instant.MIN, Instant.MAX));
        }
    }

    @Test
    void a_store_that_another_program_holds_says_so_and_works_when_it_is_let_go() throws SQLException {
        SqliteStores.open(file, Samples.CLOCK).close();
        try (SqliteStores stores = SqliteStores.open(new Connector(file, 50, writer -> {}), Samples.CLOCK)) {
            try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file);
                    Statement statement = other.createStatement()) {
                statement.execute("BEGIN IMMEDIATE");
                StoreException held = assertThrows(
                        StoreException.class, () -> stores.readings().append(Samples.minutes(0, 2)));
                assertTrue(held.toString().contains("storing 2 readings failed; another program holds the file"));
            }
            assertEquals(2, stores.readings().append(Samples.minutes(0, 2)).stored());
        }
    }

    private void refused(String expected) {
        StoreException refusal = assertThrows(
                StoreException.class,
                () -> SqliteStores.open(file, Samples.CLOCK).close());
        assertTrue(refusal.toString().contains("store " + file), refusal.toString());
        assertTrue(refusal.toString().contains(expected), refusal.toString());
    }

    private void run(String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        }
    }
}
