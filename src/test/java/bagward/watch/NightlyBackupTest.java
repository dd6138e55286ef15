package bagward.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.clockwork.HandClock;
import bagward.store.SqliteStores;
import bagward.store.StoreException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A copy each night. */
class NightlyBackupTest {
    private final HandClock clock = new HandClock(Instant.parse("2026-05-04T10:00:00Z"));
    private final Path file;
    private final Path copies;
    private final SqliteStores stores;

    NightlyBackupTest(@TempDir Path folder) {
        file = folder.resolve("bagward.db");
        copies = folder.resolve("copies");
        stores = SqliteStores.open(file, Clock.systemUTC());
    }

    @AfterEach
    void close() {
        stores.close();
    }

    @Test
    void each_night_has_one_copy_and_the_oldest_go() throws IOException {
        NightlyBackup backup = backup(3);
        for (int night = 0; night < 5; night++) {
            assertTrue(backup.backUpIfDue().isPresent());
            assertTrue(backup.backUpIfDue().isEmpty(), "a second copy of one night");
            clock.set(clock.instant().plus(Duration.ofDays(1)));
        }
        assertEquals(List.of("bagward-2026-05-06.db", "bagward-2026-05-07.db", "bagward-2026-05-08.db"), names());
    }

    @Test
    void the_night_begins_at_the_time_of_the_station() throws IOException {
        NightlyBackup backup = backup(9);
        clock.set(Instant.parse("2026-05-05T01:29:00Z")); // 02:29 in Dublin
        backup.backUpIfDue();
        assertEquals(List.of("bagward-2026-05-04.db"), names());
        clock.set(Instant.parse("2026-05-05T01:30:00Z"));
        backup.backUpIfDue();
        assertEquals(List.of("bagward-2026-05-04.db", "bagward-2026-05-05.db"), names());
    }

    @Test
    void files_of_others_stay() throws IOException {
        Files.createDirectories(copies);
        Files.writeString(copies.resolve("bagward-2020-01-01.db.keep"), "mine");
        Files.writeString(copies.resolve("holiday.db"), "mine");
        NightlyBackup backup = backup(1);
        backup.backUpIfDue();
        clock.set(clock.instant().plus(Duration.ofDays(1)));
        backup.backUpIfDue();
        assertEquals(List.of("bagward-2020-01-01.db.keep", "bagward-2026-05-05.db", "holiday.db"), names());
    }

    @Test
    void a_folder_that_cannot_be_written_is_named_and_no_older_copy_goes() throws IOException {
        Files.writeString(copies, "a file where the folder should be");
        StoreException failed =
                assertThrows(StoreException.class, () -> backup(1).backUpIfDue());
        assertTrue(failed.toString().contains("cannot be written"), failed.toString());
    }

    private NightlyBackup backup(int kept) {
        KeepingSettings.Backup settings = new KeepingSettings.Backup(copies, LocalTime.of(2, 30), kept);
        return new NightlyBackup(file, settings, ZoneId.of("Europe/Dublin"), clock);
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(copies)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }
}
