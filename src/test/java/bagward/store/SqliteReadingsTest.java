package bagward.store;

import static bagward.store.Samples.humidity;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import bagward.climate.Reading;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The embedded store keeps the contract, and what goes beyond it. */
class SqliteReadingsTest implements ReadingStoreContract {
    private final List<SqliteStores> opened = new ArrayList<>();
    private final Path folder;

    SqliteReadingsTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @Override
    public ReadingStore emptyStore() {
        return open(folder.resolve("store-" + opened.size() + ".db")).readings();
    }

    private SqliteStores open(Path file) {
        SqliteStores stores = SqliteStores.open(file, Samples.CLOCK);
        opened.add(stores);
        return stores;
    }

    @AfterEach
    void close() {
        opened.forEach(SqliteStores::close);
    }

    @Test
    void readings_are_there_after_closing_and_opening_again() {
        Path file = folder.resolve("bagward.db");
        List<Reading> batch = Samples.minutes(0, 100);
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            stores.readings().append(batch);
        }
        assertEquals(batch, open(file).readings().readings(Samples.AIR_HUMIDITY, Instant.MIN, Instant.MAX));
    }

    @Test
    void the_lower_of_two_values_for_one_time_goes_to_quarantine_whichever_came_first() {
        assertEquals(setAside(humidity(1, 51), humidity(1, 61)), setAside(humidity(1, 61), humidity(1, 51)));
    }

    private List<Quarantined> setAside(Reading first, Reading second) {
        SqliteStores stores = open(folder.resolve("two-" + opened.size() + ".db"));
        stores.readings().append(List.of(first));
        stores.readings().append(List.of(second));
        List<Quarantined> messages = stores.quarantine().newestQuarantined(10);
        assertEquals(1, messages.size());
        assertEquals("air-1/humidity", messages.get(0).topic());
        assertEquals("2026-05-04T00:01:00Z 51.0 %RH", messages.get(0).payload().readable());
        return messages;
    }

    @Test
    void a_closed_store_says_so() {
        SqliteStores stores = open(folder.resolve("closed.db"));
        ReadingStore store = stores.readings();
        stores.close();
        StoreException append = assertThrows(StoreException.class, () -> store.append(Samples.minutes(0, 1)));
        assertEquals(
                "store " + folder.resolve("closed.db") + " is closed: open it again before use", append.getMessage());
        assertThrows(StoreException.class, () -> store.newest(Samples.AIR_HUMIDITY, Instant.MAX));
    }
}
