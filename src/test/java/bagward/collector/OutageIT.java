package bagward.collector;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.store.SqliteStores;
import bagward.store.spool.AwayStore;
import bagward.store.spool.SpooledQuarantine;
import bagward.store.spool.SpooledReadings;
import bagward.units.Quantity;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.awaitility.core.ConditionFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The store goes away under a collector with a spool, and comes back. */
class OutageIT {
    private static final SeriesId BARE = new SeriesId(new SensorId("bare"), Quantity.TEMPERATURE);
    private static final SeriesId AIR = new SeriesId(new SensorId("air"), Quantity.TEMPERATURE);
    private static final long SPOOL_BYTES = 1 << 20;

    private final Path folder;
    private final List<Reading> told = Collections.synchronizedList(new ArrayList<>());
    private SqliteStores stores;
    private AwayStore store;
    private SpooledReadings readings;
    private SpooledQuarantine quarantine;

    OutageIT(@TempDir Path folder) {
        this.folder = folder;
    }

    @BeforeEach
    void open() {
        open(SPOOL_BYTES);
    }

    private void open(long spoolBytes) {
        Clock clock = Clock.systemUTC();
        stores = SqliteStores.open(folder.resolve("bagward.db"), clock);
        store = new AwayStore(stores.readings());
        readings = SpooledReadings.open(store, folder.resolve("spool"), spoolBytes, clock);
        quarantine = SpooledQuarantine.open(stores.quarantine(), folder.resolve("refused"), SPOOL_BYTES, clock);
    }

    @AfterEach
    void close() {
        quarantine.close();
        readings.close();
        stores.close();
    }

    private MqttCollector collector(TestBroker broker) {
        MqttCollector collector = new MqttCollector(
                StationClock.trusted(Clock.systemUTC()),
                broker.settings(),
                CollectorSettings.USUAL,
                MqttCollectorTest.SOURCES,
                readings,
                quarantine,
                stores.subscriptions(),
                told::addAll);
        collector.start();
        soon().until(() -> collector.state().connected());
        return collector;
    }

    private static ConditionFactory soon() {
        return await().atMost(Duration.ofSeconds(30)).pollInterval(Duration.ofMillis(20));
    }

    private List<Reading> stored(SeriesId series) {
        return stores.readings().readings(series, Instant.EPOCH, Instant.MAX);
    }

    private static void publish(Publisher publisher, int from, int to) throws Exception {
        for (int i = from; i < to; i++) {
            publisher.publish("house/air", MqttCollectorTest.json(i));
        }
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void during_an_outage_messages_are_taken_and_told_and_afterwards_each_reading_is_stored_once(TestBroker.Kind kind)
            throws Exception {
        try (TestBroker broker = kind.start(folder.resolve("broker"));
                MqttCollector collector = collector(broker)) {
            try (Publisher publisher = new Publisher(broker.settings().link())) {
                publish(publisher, 0, 10);
                publisher.publish("house/bare/a", "3");
                soon().until(() -> told.size() == 11);
                store.away(true);
                publish(publisher, 10, 60);
                publisher.publish("house/bare/a", "4");
                publisher.publish("house/air", "{");
                soon().until(() -> told.size() == 62);
            }
            assertTrue(readings.state().awaySince().isPresent());
            // The broker may repeat what was in flight: known although the store cannot be asked.
            broker.stop();
            soon().until(() -> !collector.state().connected());
            broker.startAgain();
            soon().until(() -> collector.state().connected());
            try (Publisher publisher = new Publisher(broker.settings().link())) {
                publisher.publish("house/bare/a", "5");
                soon().until(() ->
                        told.stream().filter(r -> r.series().equals(BARE)).count() == 3);
            }
            store.away(false);
            soon().until(() -> readings.state().depth().items() == 0);
        }
        assertEquals(60, stored(AIR).size());
        assertEquals(
                List.of(3.0, 4.0, 5.0),
                stored(BARE).stream().map(Reading::value).toList());
        // The broker may repeat this one too; equal messages are one line.
        assertEquals(1, stores.quarantine().newestQuarantined(10).size());
        assertEquals("ok", stores.checkIntegrity());
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void when_the_spool_is_full_the_broker_keeps_the_messages(TestBroker.Kind kind) throws Exception {
        close();
        open(2000);
        try (TestBroker broker = kind.start(folder.resolve("broker"));
                MqttCollector collector = collector(broker);
                Publisher publisher = new Publisher(broker.settings().link())) {
            store.away(true);
            publish(publisher, 0, 300);
            soon().until(() -> !collector.state().storing());
            assertTrue(
                    collector.state().says().contains("spool"),
                    collector.state().says());
            assertTrue(told.size() < 100, told.size() + " fitted");
            store.away(false);
            soon().until(() -> told.size() == 300);
            soon().until(() -> readings.state().depth().items() == 0);
            assertEquals(0, collector.state().counts().lost());
        }
        assertEquals(
                IntStream.range(0, 300).mapToObj(i -> i % 40 + 0.5).toList(),
                stored(AIR).stream().map(Reading::value).toList());
    }

    @Test
    void while_another_program_locks_the_database_messages_are_taken_also_those_that_cannot_be_used() throws Exception {
        try (TestBroker broker = TestBroker.Kind.MOSQUITTO.start(folder.resolve("broker"));
                MqttCollector collector = collector(broker);
                Publisher publisher = new Publisher(broker.settings().link());
                Connection other = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("bagward.db"));
                Statement lock = other.createStatement()) {
            publish(publisher, 0, 10);
            soon().until(() -> told.size() == 10);
            lock.execute("BEGIN IMMEDIATE");
            publish(publisher, 10, 40);
            publisher.publish("house/air", "{");
            publish(publisher, 40, 50);
            soon().until(() -> told.size() == 50);
            assertTrue(
                    readings.state().why().contains("another program holds the file"),
                    readings.state().toString());
            lock.execute("COMMIT");
            soon().until(() -> readings.state().depth().items() == 0);
            soon().until(() -> stores.quarantine().quarantinedCount() == 1);
            assertEquals(50, stored(AIR).size());
            assertEquals(0, collector.state().counts().lost());
        }
    }
}
