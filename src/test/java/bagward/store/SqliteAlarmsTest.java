package bagward.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.alarm.AlarmBook;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Alarms and their journal on disk. */
class SqliteAlarmsTest {
    private final Path file;

    SqliteAlarmsTest(@TempDir Path folder) {
        file = folder.resolve("bagward.db");
    }

    @Test
    void a_new_store_has_no_alarms() {
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            assertEquals(List.of(), stores.alarms().loadAlarms().alarms());
            assertEquals(List.of(), stores.alarms().newestEvents(10));
        }
    }

    @Test
    void every_field_of_every_alarm_survives_closing_and_opening() {
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            stores.alarms().save(AlarmSamples.book("damp 7.5 h: 93 %RH now"), List.of());
        }
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            assertEquals(
                    AlarmSamples.book("damp 7.5 h: 93 %RH now").alarms(),
                    stores.alarms().loadAlarms().alarms());
        }
    }

    @Test
    void a_saved_book_replaces_the_one_before_and_the_journal_only_grows() {
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            stores.alarms()
                    .save(AlarmSamples.book("one"), List.of(AlarmSamples.event("one"), AlarmSamples.event("two")));
            stores.alarms().save(AlarmBook.EMPTY, List.of(AlarmSamples.event("three")));
            assertEquals(List.of(), stores.alarms().loadAlarms().alarms());
            assertEquals(
                    List.of(AlarmSamples.event("three"), AlarmSamples.event("two")),
                    stores.alarms().newestEvents(2));
        }
    }
}
