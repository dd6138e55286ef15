package bagward.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.store.SqliteStores;
import bagward.units.Quantity;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Backup, restore and inspection as commands, on the example configuration. */
class StoreCommandsTest {
    private static final SeriesId SERIES = new SeriesId(new SensorId("north-air"), Quantity.TEMPERATURE);

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final Path configuration;
    private final Path database;
    private final Path copy;

    StoreCommandsTest(@TempDir Path folder) {
        configuration = folder.resolve("house.yaml");
        database = folder.resolve("bagward-data").resolve("bagward.db");
        copy = folder.resolve("copy.db");
    }

    @BeforeEach
    void store() throws IOException {
        Files.writeString(configuration, Packaged.text("config/bagward.yaml"));
        add(3);
    }

    private void add(int count) {
        try (SqliteStores stores = SqliteStores.open(database, Clock.systemUTC())) {
            long before =
                    stores.readings().readings(SERIES, Instant.MIN, Instant.MAX).size();
            for (int i = 0; i < count; i++) {
                Instant at = Instant.parse("2026-05-04T00:00:00Z").plusSeconds(60 * (before + i));
                stores.readings().append(List.of(Reading.of(SERIES, at, 20)));
            }
        }
    }

    @Test
    void a_backup_of_a_running_station_is_made_and_can_be_put_back() {
        try (SqliteStores running = SqliteStores.open(database, Clock.systemUTC())) {
            assertEquals(0, run("backup", copy.toString()));
            assertTrue(out.toString().contains("copy.db is whole and sound: 3 readings from 2026-05-04T00:00:00Z"));
            assertEquals(4, run("restore", copy.toString(), "--replace"));
            assertTrue(err.toString().contains("is in use by another running Bagward"), err::toString);
            assertEquals("ok", running.checkIntegrity());
        }
        add(2);
        assertEquals(4, run("restore", copy.toString()));
        assertTrue(err.toString().contains("say --replace"), err::toString);
        assertEquals(0, run("restore", copy.toString(), "--replace"));
        assertTrue(out.toString().contains("bagward.db now holds 3 readings"), out::toString);
        assertTrue(out.toString().contains("What was there before is"), out::toString);
    }

    @Test
    void a_backup_that_exists_is_left_alone() {
        assertEquals(0, run("backup", copy.toString()));
        assertEquals(4, run("backup", copy.toString()));
        assertTrue(err.toString().contains("exists and was left alone"), err::toString);
    }

    @Test
    void an_inspection_tells_what_a_store_holds_or_that_it_is_damaged() throws IOException {
        assertEquals(0, run("inspect"));
        assertTrue(out.toString().contains("bagward.db is sound: 3 readings"), out::toString);
        Files.writeString(copy, "Dear diary".repeat(1000));
        assertEquals(4, run("inspect", copy.toString()));
        assertTrue(err.toString().contains("damaged or is no store"), err::toString);
    }

    private int run(String... arguments) {
        List<String> all = new java.util.ArrayList<>(List.of(arguments));
        all.add("--config");
        all.add(configuration.toString());
        return Bagward.commandLine()
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(all.toArray(String[]::new));
    }
}
