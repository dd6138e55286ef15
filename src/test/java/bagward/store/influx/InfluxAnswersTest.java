package bagward.store.influx;

import static bagward.store.Samples.humidity;
import static bagward.store.influx.InfluxStores.all;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.store.Samples;
import bagward.store.StoreException;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Answers that no healthy InfluxDB of Bagward's own gives are never taken for stored readings, and say what helps. */
class InfluxAnswersTest {
    private static final String NOTHING = "{\"results\":[{\"statement_id\":0}]}";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "200 | <html>Please log in</html>     | that is no answer to expect of InfluxDB",
                "302 | moved                          | that is no answer to expect of InfluxDB",
                "413 | {\"error\":\"too large\"}      | raise max-body-size",
                "500 | {\"error\":\"engine: closed\"} | check the url and the log of the server",
                "503 | busy                           | it is overloaded or starting: wait"
            })
    void a_write_that_is_not_answered_by_204_is_not_stored(int status, String body, String remedy) throws IOException {
        HttpServer odd = answering(status, body, NOTHING);
        try (InfluxReadings store = InfluxStores.open(InfluxStores.settings(url(odd), "bags"))) {
            StoreException refused = assertThrows(StoreException.class, () -> store.append(List.of(humidity(1, 51))));
            assertTrue(refused.getMessage().contains(remedy), refused.getMessage());
        } finally {
            odd.stop(0);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<html>Please log in</html>                | the answer broke off or is not one of InfluxDB",
                "[1]                                       | the answer broke off or is not one of InfluxDB",
                "{}                                        | the answer broke off or is not one of InfluxDB",
                "{\"results\":[{\"series\":[{\"name\"       | the answer broke off or is not one of InfluxDB",
                "{\"results\":[{\"error\":\"out of memory\"}]} | that is no answer to expect of InfluxDB",
                "{\"results\":[{\"series\":[{\"values\":[[1,\"damp\",0]]}]}]} | cannot have written",
                "{\"results\":[{\"series\":[{\"values\":[[1,777,0]]}]}]}      | cannot have written",
                "{\"results\":[{\"series\":[{\"values\":[[1,null,4]]}]}]}     | cannot have written"
            })
    void an_answer_to_a_question_that_makes_no_sense_is_refused(String body, String remedy) throws IOException {
        HttpServer odd = answering(204, "", body);
        try (InfluxReadings store = InfluxStores.open(InfluxStores.settings(url(odd), "bags"))) {
            StoreException refused = assertThrows(StoreException.class, () -> all(store, Samples.AIR_HUMIDITY));
            assertTrue(refused.getMessage().contains(remedy), refused.getMessage());
            assertThrows(StoreException.class, () -> store.append(List.of(humidity(1, 51))));
        } finally {
            odd.stop(0);
        }
    }

    @Test
    void a_server_that_does_not_answer_is_given_up_after_a_time() throws IOException {
        HttpServer slow = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        CountDownLatch end = new CountDownLatch(1);
        slow.createContext("/", exchange -> {
            try (exchange) {
                end.await(20, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        slow.start();
        try (InfluxReadings store = new InfluxReadings(
                InfluxStores.settings(url(slow), "bags"),
                new HeldQuarantine(),
                Samples.CLOCK,
                new Limits(Duration.ofMillis(300), 1 << 20, 10))) {
            StoreException late = assertThrows(StoreException.class, () -> store.append(List.of(humidity(1, 51))));
            assertTrue(late.getMessage().contains("it took too long"), late.getMessage());
        } finally {
            end.countDown();
            slow.stop(0);
        }
    }

    @Test
    void an_answer_without_end_is_given_up() throws IOException {
        HttpServer endless = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        endless.createContext("/", exchange -> {
            byte[] rows = "[1777852800000,50,0],".repeat(10_000).getBytes(StandardCharsets.UTF_8);
            exchange.sendResponseHeaders(200, 0);
            try (exchange;
                    OutputStream out = exchange.getResponseBody()) {
                out.write("{\"results\":[{\"series\":[{\"values\":[".getBytes(StandardCharsets.UTF_8));
                for (int i = 0; i < 1_000; i++) {
                    out.write(rows);
                }
            }
        });
        endless.start();
        try (InfluxReadings store = InfluxStores.open(InfluxStores.settings(url(endless), "bags"))) {
            StoreException refused = assertThrows(StoreException.class, () -> all(store, Samples.AIR_HUMIDITY));
            assertTrue(refused.getMessage().contains("bytes in one answer"), refused.getMessage());
        } finally {
            endless.stop(0);
        }
    }

    @Test
    void what_the_real_server_cannot_keep_is_refused_with_the_reason(@TempDir Path folder) throws IOException {
        try (InfluxServer server = InfluxServer.start(folder)) {
            InfluxRequests requests = InfluxRequests.to(server);
            InfluxSettings bags = InfluxStores.settings(server.url(), "bags");
            requests.ask("", "CREATE DATABASE bags");
            assertRefused(InfluxStores.keptBy(bags, "none"), "the retention policy is missing");
            requests.ask("", "CREATE DATABASE other");
            requests.write("other", "reading,sensor=x value=\"text\" 1777852800000");
            assertRefused(InfluxStores.settings(server.url(), "other"), "give Bagward a database of its own");
        }
    }

    private static void assertRefused(InfluxSettings settings, String remedy) {
        try (InfluxReadings store = InfluxStores.open(settings)) {
            StoreException refused = assertThrows(StoreException.class, () -> store.append(List.of(humidity(1, 51))));
            assertTrue(refused.getMessage().contains(remedy), refused.getMessage());
            assertEquals(List.of(), store.readings(Samples.AIR_TEMPERATURE, Samples.START, Samples.START));
        }
    }

    private static HttpServer answering(int toWrites, String writeBody, String toQuestions) throws IOException {
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", exchange -> {
            try (exchange) {
                exchange.getRequestBody().readAllBytes();
                boolean write = exchange.getRequestURI().getPath().equals("/write");
                byte[] body = (write ? writeBody : toQuestions).getBytes(StandardCharsets.UTF_8);
                exchange.sendResponseHeaders(write ? toWrites : 200, body.length == 0 ? -1 : body.length);
                exchange.getResponseBody().write(body);
            }
        });
        server.start();
        return server;
    }

    private static String url(HttpServer server) {
        return "http://127.0.0.1:" + server.getAddress().getPort();
    }
}
