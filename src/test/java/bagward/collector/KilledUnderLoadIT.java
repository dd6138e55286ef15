package bagward.collector;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.store.SqliteStores;
import bagward.store.spool.SpooledQuarantine;
import bagward.store.spool.SpooledReadings;
import bagward.units.Quantity;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The whole way from broker to store is killed at random moments under load, with the store going away between and the
 * sensors put behind a gateway and taken from it again: every message that the broker took is in the store once. {@code BAGWARD_KILLS} sets how often; 6 if it is not set.
 */
class KilledUnderLoadIT {
    private static final int KILLS = Integer.parseInt(System.getenv().getOrDefault("BAGWARD_KILLS", "6"));
    private static final int LONG_ENOUGH_TO_MOVE = 8_000;
    private static final SeriesId AIR = new SeriesId(new SensorId("air"), Quantity.TEMPERATURE);
    private static final int EVERY_SO_MANY_IS_UNUSABLE = 50;

    private final Path folder;
    private final AtomicBoolean enough = new AtomicBoolean();

    KilledUnderLoadIT(@TempDir Path folder) {
        this.folder = folder;
    }

    @Test
    void every_message_that_the_broker_took_is_in_the_store_once() throws Exception {
        Random random = new Random(17);
        try (Mosquitto broker = Mosquitto.start(folder.resolve("broker"))) {
            subscribe(broker);
            CompletableFuture<Integer> published = CompletableFuture.supplyAsync(() -> publish(broker));
            for (int kill = 0; kill < KILLS; kill++) {
                runAndKill(broker, kill, random.nextInt(kill % 3 == 2 ? LONG_ENOUGH_TO_MOVE : 1500));
            }
            enough.set(true);
            int messages = published.get();
            collectTheRest(broker, messages);
            assertTrue(messages > 20 * KILLS, "too few to mean anything: " + messages);
        }
    }

    /** One short run, so that the broker knows whom to keep messages for. */
    private void subscribe(Mosquitto broker) throws Exception {
        runAndKill(broker, -1, 500);
    }

    private void runAndKill(Mosquitto broker, int seed, int afterMillis) throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        KilledStation.class.getName(),
                        broker.link().url(),
                        folder.toString(),
                        Integer.toString(seed))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (BufferedReader says = process.inputReader(StandardCharsets.UTF_8)) {
            awaitConnected(says);
            Thread.sleep(afterMillis);
        } finally {
            process.destroyForcibly().waitFor();
        }
    }

    private static void awaitConnected(BufferedReader says) throws IOException {
        String line = says.readLine();
        while (line != null && !line.equals("CONNECTED")) {
            line = says.readLine();
        }
        assertTrue(line != null, "the station ended by itself");
    }

    /** Publishes until it is enough; each message is with the broker before the next one. */
    private int publish(Mosquitto broker) {
        try (Publisher publisher = new Publisher(broker.link())) {
            int number = 0;
            while (!enough.get()) {
                publisher.publish("house/air", MqttCollectorTest.json(number));
                if (number % EVERY_SO_MANY_IS_UNUSABLE == 0) {
                    publisher.publish("house/air", "{" + number);
                }
                number++;
                Thread.sleep(2);
            }
            return number;
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private void collectTheRest(Mosquitto broker, int messages) {
        Clock clock = Clock.systemUTC();
        try (SqliteStores stores = SqliteStores.open(folder.resolve("bagward.db"), clock);
                SpooledReadings readings =
                        SpooledReadings.open(stores.readings(), folder.resolve("spool"), 1 << 20, clock);
                SpooledQuarantine quarantine =
                        SpooledQuarantine.open(stores.quarantine(), folder.resolve("refused"), 1 << 20, clock);
                MqttCollector collector = new MqttCollector(
                        StationClock.trusted(clock),
                        new BrokerSettings.External(broker.link(), 20),
                        CollectorSettings.USUAL,
                        MqttCollectorTest.SOURCES,
                        readings,
                        quarantine,
                        stores.subscriptions(),
                        told -> {})) {
            collector.start();
            await().atMost(Duration.ofSeconds(60)).until(() -> stored(stores).size() >= messages);
            assertEquals(
                    IntStream.range(0, messages).mapToObj(i -> i % 40 + 0.5).toList(),
                    stored(stores).stream().map(Reading::value).toList());
            int unusable = (messages + EVERY_SO_MANY_IS_UNUSABLE - 1) / EVERY_SO_MANY_IS_UNUSABLE;
            await().atMost(Duration.ofSeconds(20))
                    .until(() -> stores.quarantine().newestQuarantined(100_000).size() == unusable);
            assertEquals("ok", stores.checkIntegrity());
        }
    }

    private static List<Reading> stored(SqliteStores stores) {
        return stores.readings().readings(AIR, Instant.EPOCH, Instant.MAX);
    }
}
