package bagward.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sqlite.ProgressHandler;

/** The database itself fails at every possible point of a batch; the batch is there whole or not at all. */
class SqliteFaultTest {
    private static final int MOST_STEPS = 100_000;

    private final Path folder;

    SqliteFaultTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void a_batch_that_fails_at_its_nth_step_is_there_whole_or_not_at_all(boolean fromThenOn) {
        Failing failing = new Failing(fromThenOn);
        Path file = folder.resolve("bagward.db");
        try (SqliteStores stores = SqliteStores.open(new Connector(file, 50, failing::installOn), Samples.CLOCK)) {
            stores.readings().append(List.of(Samples.humidity(0, 50), Samples.humidity(1, 51)));
            int failures = 0;
            int n = 0;
            do {
                n++;
                failures += failsAt(n, failing, stores) ? 1 : 0;
            } while (failing.struck() && n < MOST_STEPS);
            assertTrue(n < MOST_STEPS, "the batch never got through");
            assertTrue(failures > n / 2, "only " + failures + " of " + n + " steps failed");
            assertEquals("ok", stores.checkIntegrity());
        }
    }

    private static boolean failsAt(int n, Failing failing, SqliteStores stores) {
        List<Reading> batch = batch(n);
        failing.failAt(n);
        boolean succeeded = appends(stores, batch);
        failing.stop();
        int there = stored(stores, n).size();
        // A step of the commit may fail after the commit itself: then the batch is there, but it was not promised.
        assertTrue(there == 3 || (there == 0 && !succeeded), "step " + n + " left " + there + " of 3 readings");
        // The driver swallows a failure of its own probing after a commit; the next call meets it and heals it.
        if (!appends(stores, batch)) {
            stores.readings().append(batch);
        }
        assertEquals(3, stored(stores, n).size(), "a repeated batch is whole");
        return !succeeded;
    }

    @Test
    void a_trigger_that_undoes_the_whole_transaction_leaves_nothing_and_the_store_works_on() throws SQLException {
        Connector connector = new Connector(folder.resolve("bagward.db"), 50, writer -> {});
        try (SqliteStores stores = SqliteStores.open(connector, Samples.CLOCK)) {
            try (Session other = connector.writer()) {
                other.update("CREATE TRIGGER undo AFTER INSERT ON reading WHEN NEW.value = 99"
                        + " BEGIN SELECT RAISE(ROLLBACK, 'undone'); END");
            }
            List<Reading> poisoned = List.of(Samples.humidity(1, 51), Samples.humidity(2, 99));
            assertThrows(StoreException.class, () -> stores.readings().append(poisoned));
            assertEquals(List.of(), stores.readings().readings(Samples.AIR_HUMIDITY, Instant.MIN, Instant.MAX));
            assertEquals(
                    1,
                    stores.readings().append(List.of(Samples.humidity(1, 51))).stored());
        }
    }

    @Test
    void a_full_disk_refuses_the_batch_in_plain_words_and_keeps_what_was_there() {
        Connector small = new Connector(folder.resolve("bagward.db"), 50, writer -> {
            try (Statement statement = writer.createStatement()) {
                statement.execute("PRAGMA max_page_count = 60");
            }
        });
        try (SqliteStores stores = SqliteStores.open(small, Samples.CLOCK)) {
            List<Reading> first = Samples.minutes(0, 100);
            stores.readings().append(first);
            StoreException full =
                    assertThrows(StoreException.class, () -> stores.readings().append(Samples.minutes(1_000, 50_000)));
            assertTrue(full.toString().contains("the disk is full: free some space"), full.toString());
            assertEquals(first, stores.readings().readings(Samples.AIR_HUMIDITY, Instant.MIN, Instant.MAX));
            assertEquals("ok", stores.checkIntegrity());
            assertEquals(1, stores.readings().append(Samples.minutes(500, 1)).stored());
        }
    }

    @Test
    void a_failed_save_of_the_alarms_keeps_the_book_and_the_journal_as_they_were() throws SQLException {
        Connector connector = new Connector(folder.resolve("bagward.db"), 50, writer -> {});
        try (SqliteStores stores = SqliteStores.open(connector, Samples.CLOCK)) {
            stores.alarms().save(AlarmSamples.book("before"), List.of(AlarmSamples.event("before")));
            try (Session other = connector.writer()) {
                other.update("CREATE TRIGGER refuse BEFORE INSERT ON alarm_event BEGIN SELECT RAISE(ABORT, 'no'); END");
            }
            assertThrows(
                    StoreException.class,
                    () -> stores.alarms().save(AlarmSamples.book("after"), List.of(AlarmSamples.event("after"))));
            assertEquals(
                    AlarmSamples.book("before").alarms(),
                    stores.alarms().loadAlarms().alarms());
            assertEquals(List.of(AlarmSamples.event("before")), stores.alarms().newestEvents(9));
        }
    }

    /** Three readings of batch n: a new one, one of a new series only the first time, and one that contradicts. */
    private static List<Reading> batch(int n) {
        List<Reading> batch = new ArrayList<>();
        batch.add(Samples.humidity(10L * n, 50));
        batch.add(Samples.temperature(10L * n + 1, 20));
        batch.add(Samples.lentHumidity(10L * n + 2, 90));
        batch.add(Samples.humidity(0, 40));
        return batch;
    }

    private static List<Reading> stored(SqliteStores stores, int n) {
        Instant from = Samples.at(10L * n);
        Instant to = Samples.at(10L * n + 10);
        return Samples.SERIES.stream()
                .flatMap(series -> stores.readings().readings(series, from, to).stream())
                .toList();
    }

    private static boolean appends(SqliteStores stores, List<Reading> batch) {
        try {
            stores.readings().append(batch);
            return true;
        } catch (StoreException e) {
            assertTrue(e.toString().contains("storing 4 readings failed"), e.toString());
            return false;
        }
    }

    /** Makes the database engine give up at the nth of its checks, once or from then on. */
    private static final class Failing extends ProgressHandler {
        private final boolean fromThenOn;
        private boolean armed;
        private int left;

        Failing(boolean fromThenOn) {
            this.fromThenOn = fromThenOn;
        }

        void installOn(Connection writer) throws SQLException {
            ProgressHandler.setHandler(writer, 1, this);
        }

        void failAt(int n) {
            left = n;
            armed = true;
        }

        void stop() {
            armed = false;
        }

        boolean struck() {
            return left <= 0;
        }

        @Override
        protected int progress() {
            if (!armed) {
                return 0;
            }
            left--;
            return left == 0 || (fromThenOn && left < 0) ? 1 : 0;
        }
    }
}
