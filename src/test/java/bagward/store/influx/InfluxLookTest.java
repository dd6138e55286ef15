package bagward.store.influx;

import static bagward.store.Samples.humidity;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.store.StoreException;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a look at a real server tells, and waiting for one. */
class InfluxLookTest {
    private final Path folder;

    InfluxLookTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @Test
    void a_look_tells_whether_the_database_is_there_and_how_long_it_keeps_readings_and_makes_nothing()
            throws IOException {
        try (InfluxServer server = InfluxServer.start(folder)) {
            InfluxSettings bags = InfluxStores.settings(server.url(), "bags");
            InfluxRequests requests = InfluxRequests.to(server);
            assertTells("database 'bags' is missing and will be created with the first reading", bags);
            assertTrue(!requests.ask("", "SHOW DATABASES").body().contains("bags"), "the look made a database");
            requests.ask("", "CREATE DATABASE bags");
            requests.ask("", "CREATE RETENTION POLICY month ON bags DURATION 30d REPLICATION 1");
            assertTells("database 'bags' is there and keeps readings for ever.", bags);
            assertTells("keeps readings for 720h0m0s only", InfluxStores.keptBy(bags, "month"));
            assertTells("has no such retention policy", InfluxStores.keptBy(bags, "year"));
            server.stop();
            assertThrows(StoreException.class, () -> InfluxLook.at(bags));
        }
    }

    private static void assertTells(String part, InfluxSettings settings) {
        String told = InfluxLook.at(settings);
        assertTrue(told.startsWith("InfluxDB 1."), told);
        assertTrue(told.contains(part), told);
    }

    @Test
    void a_server_that_comes_up_later_is_waited_for_and_one_that_does_not_is_given_up() throws IOException {
        try (InfluxServer server = InfluxServer.start(folder);
                InfluxReadings store = InfluxStores.open(InfluxStores.settings(server.url(), "bags"))) {
            server.stop();
            assertThrows(StoreException.class, () -> store.awaitServer(Duration.ofMillis(100)));
            CompletableFuture<Void> waiting =
                    CompletableFuture.runAsync(() -> store.awaitServer(Duration.ofMinutes(1)));
            server.startAgain();
            waiting.orTimeout(30, TimeUnit.SECONDS).join();
            assertEquals(1, store.append(List.of(humidity(1, 51))).stored());
        }
    }
}
