package bagward.collector;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.store.SqliteStores;
import bagward.units.Quantity;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A collector that is killed loses nothing and doubles nothing. */
class KillTest {
    private static final int TIMED = 50;
    private static final int BARE = 6;
    private static final Instant FIRST = Instant.parse("2026-01-01T00:00:00Z");

    private final Path folder;

    KillTest(@TempDir Path folder) {
        this.folder = folder;
    }

    static Stream<Arguments> casesOfBrokerAndMoment() {
        return Stream.of(TestBroker.Kind.values())
                .flatMap(kind -> Stream.of(KilledCollector.Moment.values()).map(moment -> Arguments.of(kind, moment)));
    }

    @ParameterizedTest
    @MethodSource("casesOfBrokerAndMoment")
    void nothing_is_lost_and_nothing_doubled(TestBroker.Kind kind, KilledCollector.Moment moment) throws Exception {
        Path file = folder.resolve("bagward.db");
        try (TestBroker broker = kind.start(folder.resolve("broker"))) {
            killWhileCollecting(broker, file, moment);
            try (SqliteStores stores = SqliteStores.open(file, Clock.systemUTC())) {
                int committed = timed(stores).size() + bare(stores).size();
                assertEquals(moment == KilledCollector.Moment.BEFORE_ACKNOWLEDGEMENT, committed > 0);
                collectTheRest(broker, stores);
                assertEquals(
                        IntStream.range(0, TIMED).mapToObj(i -> i % 40 + 0.5).toList(),
                        timed(stores).stream().map(Reading::value).toList());
                assertEquals(
                        IntStream.range(0, BARE).mapToObj(i -> (double) i).toList(),
                        bare(stores).stream().map(Reading::value).sorted().toList());
                assertEquals("ok", stores.checkIntegrity());
            }
        }
    }

    private static void killWhileCollecting(TestBroker broker, Path file, KilledCollector.Moment moment)
            throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        KilledCollector.class.getName(),
                        broker.settings().link().url(),
                        file.toString(),
                        moment.name())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (BufferedReader says = process.inputReader(StandardCharsets.UTF_8)) {
            waitFor("CONNECTED", says);
            try (Publisher publisher = new Publisher(broker.settings().link())) {
                for (int i = 0; i < BARE; i++) {
                    publisher.publish("house/bare/a", Integer.toString(i));
                }
                for (int i = 0; i < TIMED; i++) {
                    publisher.publish("house/air", MqttCollectorTest.json(i));
                }
            }
            waitFor("STOPPED", says);
        } finally {
            process.destroyForcibly().waitFor();
        }
    }

    private static void waitFor(String word, BufferedReader says) throws IOException {
        String line = says.readLine();
        while (line != null && !line.equals(word)) {
            line = says.readLine();
        }
        assertTrue(line != null, "the collector ended before it said " + word);
    }

    private static void collectTheRest(TestBroker broker, SqliteStores stores) {
        try (MqttCollector collector = new MqttCollector(
                StationClock.trusted(Clock.systemUTC()),
                broker.settings(),
                CollectorSettings.USUAL,
                MqttCollectorTest.SOURCES,
                stores.readings(),
                stores.quarantine(),
                stores.subscriptions(),
                readings -> {})) {
            collector.start();
            await().atMost(Duration.ofSeconds(30))
                    .until(() -> collector.state().counts().messages() == TIMED + BARE);
        }
    }

    private static List<Reading> timed(SqliteStores stores) {
        return readings(stores, "air");
    }

    private static List<Reading> bare(SqliteStores stores) {
        return readings(stores, "bare");
    }

    private static List<Reading> readings(SqliteStores stores, String sensor) {
        SeriesId series = new SeriesId(new SensorId(sensor), Quantity.TEMPERATURE);
        return stores.readings().readings(series, FIRST, Instant.parse("2100-01-01T00:00:00Z"));
    }
}
