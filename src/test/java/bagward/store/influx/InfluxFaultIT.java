package bagward.store.influx;

import static bagward.store.Samples.humidity;
import static bagward.store.Samples.lentHumidity;
import static bagward.store.Samples.temperature;
import static bagward.store.influx.InfluxStores.all;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import bagward.store.Samples;
import bagward.store.StoreException;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The server, or the way to it, fails at every possible request; what was promised is there, and repeating is right. */
class InfluxFaultIT {
    private static final int BATCH = 37;

    private static InfluxServer server;

    @BeforeAll
    static void start(@TempDir Path folder) throws IOException {
        server = InfluxServer.start(folder);
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @ParameterizedTest
    @CsvSource({
        "NOT_PASSED_ON, false", "NOT_PASSED_ON, true",
        "ANSWER_LOST, false", "ANSWER_LOST, true",
        "UNAVAILABLE, false", "UNAVAILABLE, true"
    })
    void a_batch_that_fails_at_its_nth_request_is_right_once_it_is_repeated(Relay.Failure how, boolean fromThenOn)
            throws IOException {
        try (Relay relay = Relay.before(server)) {
            int failures = 0;
            int n = 0;
            Trial trial;
            do {
                n++;
                trial = failAt(n, relay, how, fromThenOn);
                failures += trial.failed() ? 1 : 0;
            } while (trial.struck());
            assertTrue(n > 4, "only " + n + " requests were made");
            assertTrue(failures > 0, "nothing failed");
        }
    }

    /** One try: whether the nth request came, and whether an append failed by it. */
    private record Trial(boolean struck, boolean failed) {}

    /** A new database and a new store, so that each of their requests is met. */
    private static Trial failAt(int n, Relay relay, Relay.Failure how, boolean fromThenOn) {
        HeldQuarantine quarantine = new HeldQuarantine();
        List<Reading> first = List.of(humidity(0, 50), humidity(2, 80));
        String database = "fault " + how + fromThenOn + n;
        try (InfluxReadings store = InfluxStores.open(InfluxStores.settings(relay.url(), database), quarantine)) {
            relay.failAt(n, how, fromThenOn);
            boolean failed = fails(store, first);
            failed |= fails(store, batch());
            Trial trial = new Trial(relay.struck(), failed);
            relay.heal();
            store.append(first);
            store.append(batch());
            assertRight(store, quarantine);
            return trial;
        }
    }

    private static void assertRight(InfluxReadings store, HeldQuarantine quarantine) {
        assertEquals(List.of(humidity(0, 60), humidity(1, 51), humidity(2, 80)), all(store, Samples.AIR_HUMIDITY));
        assertEquals(List.of(temperature(1, 21)), all(store, Samples.AIR_TEMPERATURE));
        assertEquals(List.of(lentHumidity(9, 90)), all(store, Samples.LENT_HUMIDITY));
        assertTrue(quarantine.payloads().contains("2026-05-04T00:02:00Z 70.0 %RH"), "a lower new one was lost");
        assertTrue(quarantine.payloads().contains("2026-05-04T00:00:00Z 50.0 %RH"), "a lower old one was lost");
    }

    /** New ones, one that is late, one that is lower and one that is higher than what is there. */
    private static List<Reading> batch() {
        return List.of(humidity(1, 51), temperature(1, 21), lentHumidity(9, 90), humidity(2, 70), humidity(0, 60));
    }

    private static boolean fails(InfluxReadings store, List<Reading> batch) {
        try {
            store.append(batch);
            return false;
        } catch (StoreException e) {
            assertTrue(e.getMessage().startsWith("InfluxDB at "), e.getMessage());
            return true;
        }
    }

    @Test
    void a_server_that_is_stopped_is_said_to_be_away_and_serves_again_when_it_is_back(@TempDir Path folder)
            throws IOException {
        try (InfluxServer other = InfluxServer.start(folder);
                InfluxReadings store = InfluxStores.open(InfluxStores.settings(other.url(), "bags"))) {
            store.append(Samples.minutes(0, BATCH));
            other.stop();
            long start = System.nanoTime();
            StoreException away = assertThrows(StoreException.class, () -> store.append(Samples.minutes(BATCH, BATCH)));
            assertTrue(System.nanoTime() - start < TimeUnit.SECONDS.toNanos(5), "it took long to say so");
            assertTrue(away.getMessage().contains("nobody answers there: start InfluxDB"), away.getMessage());
            assertThrows(StoreException.class, () -> store.newest(Samples.AIR_HUMIDITY, Instant.MAX));
            other.startAgain();
            assertEquals(BATCH, store.append(Samples.minutes(BATCH, BATCH)).stored());
            assertEquals(Samples.minutes(0, 2 * BATCH), all(store, Samples.AIR_HUMIDITY));
        }
    }

    @Test
    void a_server_that_is_killed_in_mid_write_has_every_batch_that_it_acknowledged(@TempDir Path folder)
            throws IOException, InterruptedException {
        long seed = 20261125;
        Random random = new Random(seed);
        try (InfluxServer other = InfluxServer.start(folder);
                InfluxReadings store = InfluxStores.open(InfluxStores.settings(other.url(), "bags"))) {
            int next = 0;
            for (int kill = 0; kill < 5; kill++) {
                next = appendUntilKilled(other, store, next, random);
                other.startAgain();
                assertEquals(
                        Samples.minutes(0, next * BATCH),
                        all(store, Samples.AIR_HUMIDITY).subList(0, next * BATCH));
            }
            store.append(Samples.minutes(next * BATCH, BATCH));
            assertEquals(Samples.minutes(0, (next + 1) * BATCH), all(store, Samples.AIR_HUMIDITY), "seed " + seed);
        }
    }

    /** Returns the number of the first batch that was not acknowledged. */
    private static int appendUntilKilled(InfluxServer server, InfluxReadings store, int first, Random random)
            throws InterruptedException {
        AtomicBoolean failed = new AtomicBoolean();
        CompletableFuture<Integer> writing = CompletableFuture.supplyAsync(() -> {
            int batch = first;
            while (!fails(store, Samples.minutes(batch * BATCH, BATCH))) {
                batch++;
            }
            failed.set(true);
            return batch;
        });
        TimeUnit.MILLISECONDS.sleep(150 + random.nextInt(300));
        assertFalse(failed.get(), "it failed before it was killed");
        server.kill();
        return writing.join();
    }
}
