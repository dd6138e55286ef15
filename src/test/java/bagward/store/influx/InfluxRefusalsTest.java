package bagward.store.influx;

import static bagward.store.influx.InfluxStores.all;
import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import bagward.store.ReadingStore.Receipt;
import bagward.store.Samples;
import bagward.store.StoreException;
import bagward.store.spool.SpooledReadings;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Single readings that a server will never take are set aside with its reason, and hold up nothing. */
class InfluxRefusalsTest {
    private static InfluxServer server;
    private static InfluxRequests requests;
    private static int databases;

    private final HeldQuarantine quarantine = new HeldQuarantine();
    private final Instant now = Instant.now().truncatedTo(ChronoUnit.MILLIS);

    @BeforeAll
    static void start(@TempDir Path folder) throws IOException {
        server = InfluxServer.start(folder);
        requests = InfluxRequests.to(server);
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    /** A database whose readings are kept for an hour, the least that 1.x allows. */
    private static InfluxSettings keptForAnHour() {
        String database = "bags" + databases++;
        requests.ask("", "CREATE DATABASE " + database);
        requests.ask("", "CREATE RETENTION POLICY short ON " + database + " DURATION 1h REPLICATION 1");
        return InfluxStores.keptBy(InfluxStores.settings(server.url(), database), "short");
    }

    private Reading ago(Duration age, double value) {
        return Reading.of(Samples.AIR_HUMIDITY, now.minus(age), value);
    }

    @Test
    void readings_older_than_the_retention_are_set_aside_and_the_others_are_stored() {
        try (InfluxReadings store = InfluxStores.open(keptForAnHour(), quarantine)) {
            List<Reading> batch = new ArrayList<>();
            for (int minute = 0; minute < 50; minute++) {
                batch.add(ago(Duration.ofMinutes(minute), minute));
            }
            batch.add(20, ago(Duration.ofDays(40), 71));
            batch.add(30, ago(Duration.ofDays(50), 72));
            batch.add(40, ago(Duration.ofDays(60), 73));
            assertEquals(new Receipt(50, 0, 0), store.append(batch));
            assertEquals(50, all(store, Samples.AIR_HUMIDITY).size());
            assertEquals(3, quarantine.payloads().size());
            assertTrue(quarantine.payloads().contains(now.minus(Duration.ofDays(50)) + " 72.0 %RH"));
            String reason = quarantine.newestQuarantined(1).get(0).reason();
            assertTrue(
                    reason.contains(
                            "refuses it for good (partial write: points beyond retention policy): it is older than"),
                    reason);
            assertTrue(store.troubles().startsWith("3 readings since the start were refused"), store.troubles());
        }
    }

    @Test
    void they_do_not_hold_up_what_waits_behind_them_in_the_spool(@TempDir Path folder) {
        InfluxSettings settings = keptForAnHour();
        try (InfluxReadings store = InfluxStores.open(settings, quarantine);
                SpooledReadings spooled =
                        SpooledReadings.open(store, folder.resolve("spool"), 1 << 20, Clock.systemUTC())) {
            server.stop();
            spooled.append(List.of(ago(Duration.ofDays(40), 71)));
            spooled.append(List.of(ago(Duration.ofMinutes(1), 51)));
            assertEquals(2, spooled.state().depth().items());
            startAgain();
            await().atMost(Duration.ofSeconds(20))
                    .until(() -> spooled.state().depth().items() == 0);
            assertEquals(List.of(ago(Duration.ofMinutes(1), 51)), all(store, Samples.AIR_HUMIDITY));
            assertEquals(List.of(now.minus(Duration.ofDays(40)) + " 71.0 %RH"), quarantine.payloads());
        }
    }

    private static void startAgain() {
        try {
            server.startAgain();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void readings_of_a_time_for_which_another_program_wrote_text_are_set_aside() {
        InfluxSettings settings = InfluxStores.settings(server.url(), "spoiled");
        try (InfluxReadings store = InfluxStores.open(settings, quarantine)) {
            store.append(List.of(ago(Duration.ZERO, 50)));
            Instant spoiled = now.minus(Duration.ofDays(30));
            requests.write("spoiled", "reading,sensor=x value=\"text\" " + spoiled.toEpochMilli());
            Reading late = Reading.of(Samples.AIR_HUMIDITY, spoiled.plusMillis(5), 61);
            assertEquals(new Receipt(1, 0, 0), store.append(List.of(late, ago(Duration.ofMinutes(1), 52))));
            assertEquals(2, all(store, Samples.AIR_HUMIDITY).size());
            assertEquals(List.of(late.measuredAt() + " 61.0 %RH"), quarantine.payloads());
        }
    }

    @Test
    void where_every_reading_would_be_refused_they_wait_for_the_database_to_be_put_right() {
        requests.ask("", "CREATE DATABASE foreign_one");
        requests.write("foreign_one", "reading,sensor=x value=\"text\" " + now.toEpochMilli());
        try (InfluxReadings store = InfluxStores.open(InfluxStores.settings(server.url(), "foreign_one"), quarantine)) {
            assertThrows(StoreException.class, () -> store.append(List.of(ago(Duration.ZERO, 50))));
            assertEquals(List.of(), quarantine.payloads());
            assertEquals("", store.troubles());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {401, 403, 404, 429, 500, 503})
    void other_refusals_are_of_the_whole_and_are_waited_out(int status) throws IOException {
        HttpServer refusing = answering(status, "{\"error\":\"no\"}", Integer.MAX_VALUE);
        try (InfluxReadings store = InfluxStores.open(InfluxStores.settings(url(refusing), "bags"), quarantine)) {
            assertThrows(StoreException.class, () -> store.append(Samples.minutes(0, 8)));
            assertEquals(List.of(), quarantine.payloads());
        } finally {
            refusing.stop(0);
        }
    }

    @Test
    void a_request_that_is_too_long_for_the_server_is_sent_in_parts() throws IOException {
        HttpServer narrow = answering(413, "{\"error\":\"too large\"}", 300);
        try (InfluxReadings store = InfluxStores.open(InfluxStores.settings(url(narrow), "bags"), quarantine)) {
            assertEquals(new Receipt(50, 0, 0), store.append(Samples.minutes(0, 50)));
        } finally {
            narrow.stop(0);
        }
    }

    @Test
    void a_server_that_does_not_delete_is_said_to_keep_old_readings_and_is_no_trouble_otherwise() throws IOException {
        HttpServer keeping = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        keeping.createContext("/", exchange -> {
            try (exchange) {
                String asked = new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8)
                        + exchange.getRequestURI();
                byte[] body = (asked.contains("DELETE")
                                ? "{\"results\":[{\"error\":\"not implemented: DELETE\"}]}"
                                : "{\"results\":[{\"series\":[{\"values\":[[1777852800000,50]]}]}]}")
                        .getBytes(StandardCharsets.UTF_8);
                exchange.sendResponseHeaders(200, body.length);
                exchange.getResponseBody().write(body);
            }
        });
        keeping.start();
        try (InfluxReadings store = InfluxStores.open(InfluxStores.settings(url(keeping), "bags"), quarantine)) {
            assertEquals(0, store.deleteBefore(now, 10));
            assertEquals(0, store.deleteBefore(now, 10));
            assertTrue(store.troubles().startsWith("Readings older than they need be stay there"), store.troubles());
        } finally {
            keeping.stop(0);
        }
    }

    /** Answers writes so if they are at least so long, and takes shorter ones. */
    private static HttpServer answering(int status, String said, int shorter) throws IOException {
        HttpServer answering = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        answering.createContext("/", exchange -> {
            try (exchange) {
                int length = exchange.getRequestBody().readAllBytes().length;
                boolean write = exchange.getRequestURI().getPath().equals("/write");
                boolean refuse = write && (shorter == Integer.MAX_VALUE || length > shorter);
                byte[] body = (refuse ? said : write ? "" : "{\"results\":[{\"statement_id\":0}]}")
                        .getBytes(StandardCharsets.UTF_8);
                exchange.sendResponseHeaders(refuse ? status : write ? 204 : 200, body.length == 0 ? -1 : body.length);
                exchange.getResponseBody().write(body);
            }
        });
        answering.start();
        return answering;
    }

    private static String url(HttpServer server) {
        return "http://127.0.0.1:" + server.getAddress().getPort();
    }
}
