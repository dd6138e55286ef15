package bagward.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmPhase;
import java.nio.file.Path;
import java.time.Instant;
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

    @Test
    void events_of_a_time_come_oldest_first_with_the_reason_that_was_given() {
        AlarmEvent first = AlarmSamples.event("one");
        AlarmEvent shelved = new AlarmEvent(
                first.at().plusSeconds(60),
                first.key(),
                AlarmPhase.UNACKNOWLEDGED,
                AlarmPhase.SHELVED,
                "Ida",
                "two",
                "bay is washed");
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            stores.alarms().save(AlarmBook.EMPTY, List.of(first, shelved));
            assertEquals(List.of(first, shelved), stores.alarms().events(Instant.EPOCH, Instant.MAX));
            assertEquals(List.of(shelved), stores.alarms().events(first.at().plusSeconds(60), Instant.MAX));
            assertEquals(
                    List.of(first),
                    stores.alarms()
                            .events(first.at().minusSeconds(1), first.at().plusSeconds(60)));
        }
    }
}
