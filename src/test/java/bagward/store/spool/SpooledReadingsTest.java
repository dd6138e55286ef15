package bagward.store.spool;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import bagward.climate.SeriesId;
import bagward.store.ReadingStore;
import bagward.store.ReadingStore.Receipt;
import bagward.store.ReadingStoreContract;
import bagward.store.Samples;
import bagward.store.SqliteStores;
import bagward.store.StoreException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A store behind a spool keeps the contract of a store, and goes on while the store is away. */
class SpooledReadingsTest implements ReadingStoreContract {
    private static final Duration PAUSE = Duration.ofMillis(5);

    private final Path folder;
    private final List<AutoCloseable> open = new ArrayList<>();
    private int stores;

    SpooledReadingsTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @AfterEach
    void close() throws Exception {
        for (int i = open.size() - 1; i >= 0; i--) {
            open.get(i).close();
        }
    }

    private AwayStore database() {
        SqliteStores made = SqliteStores.open(folder.resolve(++stores + ".db"), Samples.CLOCK);
        open.add(made);
        return new AwayStore(made.readings());
    }

    private SpooledReadings spooled(ReadingStore store, String name, long limitBytes) {
        SpooledReadings spooled = SpooledReadings.open(
                store, new Spool.Plan(folder.resolve(name), limitBytes, 2000, Disk.REAL), Samples.CLOCK, PAUSE);
        open.add(spooled);
        return spooled;
    }

    private SpooledReadings spooled(ReadingStore store) {
        return spooled(store, "spool-" + stores, 1 << 20);
    }

    @Override
    public ReadingStore emptyStore() {
        return spooled(database());
    }

    private static List<Reading> all(ReadingStore store, SeriesId series) {
        return store.readings(series, Instant.MIN, Instant.MAX);
    }

    private static void drained(SpooledReadings spooled) {
        await().atMost(Duration.ofSeconds(20))
                .pollInterval(Duration.ofMillis(5))
                .until(() -> spooled.state().depth().items() == 0);
    }

    @Test
    void while_the_store_is_away_readings_wait_on_disk_and_then_all_are_stored_in_order() {
        AwayStore store = database();
        SpooledReadings spooled = spooled(store);
        spooled.append(Samples.minutes(0, 5));
        store.away(true);
        for (int i = 5; i < 500; i += 5) {
            assertEquals(new Receipt(0, 0, 0), spooled.append(Samples.minutes(i, 5)));
        }
        assertEquals(Optional.of(Samples.START), spooled.state().awaySince());
        assertTrue(
                spooled.state().says().contains("gone for the test"),
                spooled.state().says());
        assertEquals(495, spooled.state().depth().items());
        store.away(false);
        drained(spooled);
        assertEquals(Samples.minutes(0, 500), all(store, Samples.AIR_HUMIDITY));
        assertEquals(Samples.minutes(0, 500), store.arrivals(), "in the order in which they came");
        assertEquals(new Receipt(495, 0, 0), spooled.state().passedOn());
        assertEquals(Optional.empty(), spooled.state().awaySince());
        assertEquals(new Receipt(1, 0, 0), spooled.append(Samples.minutes(500, 1)), "directly again");
    }

    @Test
    void what_waits_at_a_restart_is_stored_by_the_next_run() throws Exception {
        AwayStore store = database();
        store.away(true);
        SpooledReadings first = spooled(store);
        first.append(Samples.minutes(0, 50));
        first.close();
        store.away(false);
        SpooledReadings second = spooled(store);
        drained(second);
        assertEquals(Samples.minutes(0, 50), all(store, Samples.AIR_HUMIDITY));
    }

    @Test
    void beyond_its_limit_a_batch_is_refused_so_that_the_broker_keeps_it() {
        AwayStore store = database();
        store.away(true);
        SpooledReadings spooled = spooled(store, "small", 3000);
        int taken = 0;
        while (taken < 100 && takes(spooled, Samples.minutes(taken * 5, 5))) {
            taken++;
        }
        assertTrue(taken > 5 && taken < 100, "took " + taken);
        assertTrue(spooled.state().depth().percent() > 85, spooled.state().toString());
        store.away(false);
        drained(spooled);
        assertEquals(Samples.minutes(0, taken * 5), all(store, Samples.AIR_HUMIDITY));
    }

    private static boolean takes(ReadingStore store, List<Reading> batch) {
        try {
            store.append(batch);
            return true;
        } catch (StoreException full) {
            assertTrue(full.toString().contains("the broker keeps"), full.toString());
            return false;
        }
    }

    @Test
    void a_store_that_cannot_be_asked_says_so_and_is_not_answered_for_from_the_spool_alone() {
        AwayStore store = database();
        SpooledReadings spooled = spooled(store);
        store.away(true);
        spooled.append(Samples.minutes(0, 5));
        assertThrows(StoreException.class, () -> all(spooled, Samples.AIR_HUMIDITY));
        assertThrows(StoreException.class, () -> spooled.newest(Samples.AIR_HUMIDITY, Instant.MAX));
    }

    /** A store that takes nothing but can be read, at random times, gives what one gives that was never away. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void whenever_the_store_is_away_what_is_read_is_what_was_put(long seed) {
        Random random = new Random(seed);
        AwayStore store = database();
        SpooledReadings spooled = spooled(store);
        ReadingStore reference = database();
        for (List<Reading> batch : Samples.cut(Samples.mixed(random, 600), random)) {
            store.refusing(random.nextInt(3) > 0);
            spooled.append(batch);
            reference.append(batch);
            SeriesId series = Samples.SERIES.get(random.nextInt(Samples.SERIES.size()));
            assertEquals(all(reference, series), all(spooled, series));
            Instant at = Samples.at(random.nextInt(60));
            assertEquals(reference.newest(series, at), spooled.newest(series, at));
        }
        store.refusing(false);
        drained(spooled);
        for (SeriesId series : Samples.SERIES) {
            assertEquals(all(reference, series), all(store, series));
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void when_the_nth_call_of_the_store_fails_each_reading_is_stored_once(boolean fromThenOn) {
        AwayStore store = database();
        SpooledReadings spooled = spooled(store);
        for (int n = 1; n <= 12; n++) {
            int first = n * 40;
            store.failAt(n, fromThenOn);
            for (int i = 0; i < 40; i += 4) {
                spooled.append(Samples.minutes(first + i, 4));
            }
            store.away(false);
            drained(spooled);
            assertEquals(
                    Samples.minutes(first, 40),
                    store.readings(Samples.AIR_HUMIDITY, Samples.at(first), Samples.at(first + 40)),
                    "call " + n);
        }
        assertEquals(480, all(store, Samples.AIR_HUMIDITY).size());
    }
}
