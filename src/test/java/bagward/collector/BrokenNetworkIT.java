package bagward.collector;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import bagward.store.TestAuthority;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.awaitility.core.ConditionFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Broker and network fail under a collector; and the way to the broker is encrypted. */
class BrokenNetworkIT {
    private final Path folder;
    private final MemoryStore store = new MemoryStore();

    BrokenNetworkIT(@TempDir Path folder) {
        this.folder = folder;
    }

    private MqttCollector collector(BrokerLink link) {
        MqttCollector collector = new MqttCollector(
                StationClock.trusted(Clock.systemUTC()),
                new BrokerSettings.External(link, 20),
                CollectorSettings.USUAL,
                MqttCollectorTest.SOURCES,
                store,
                store,
                store,
                readings -> {});
        collector.start();
        return collector;
    }

    private static ConditionFactory soon() {
        return await().atMost(Duration.ofSeconds(60)).pollInterval(Duration.ofMillis(50));
    }

    private static List<Double> values(int count) {
        return IntStream.range(0, count).mapToObj(i -> i % 40 + 0.5).toList();
    }

    private List<Double> stored() {
        return store.all().stream().map(Reading::value).toList();
    }

    @Test
    void a_connection_that_breaks_off_in_mid_message_again_and_again_loses_and_doubles_nothing() throws Exception {
        int cuts = 12;
        try (Mosquitto broker = Mosquitto.start(folder);
                CuttingProxy proxy = new CuttingProxy(broker.port(), cuts, 5);
                MqttCollector collector = collector(
                        new BrokerLink("tcp://127.0.0.1:" + proxy.port(), Optional.empty(), Optional.empty()));
                Publisher publisher = new Publisher(broker.link())) {
            soon().until(() -> collector.state().counts().connections() > 0);
            int sent = 0;
            while (proxy.cutsLeft() > 0) {
                // While nobody listens nothing can be cut; a fast machine would send in vain.
                soon().until(() -> collector.state().connected() || proxy.cutsLeft() <= 0);
                publisher.publish("house/air", MqttCollectorTest.json(sent++));
                assertTrue(sent < 200_000, "the network was not cut often enough");
            }
            int all = sent;
            soon().until(() -> store.count() == all);
            assertEquals(values(all), stored());
            assertEquals(0, store.quarantinedCount(), "half a message is never taken for a whole one");
        }
    }

    @Test
    void after_a_broker_was_killed_and_started_again_readings_come_once() throws Exception {
        try (Mosquitto broker = Mosquitto.start(folder);
                MqttCollector collector = collector(broker.link())) {
            soon().until(() -> collector.state().connected());
            for (int round = 0; round < 3; round++) {
                try (Publisher publisher = new Publisher(broker.link())) {
                    for (int i = 0; i < 50; i++) {
                        publisher.publish("house/air", MqttCollectorTest.json(50 * round + i));
                    }
                }
                int there = 50 * (round + 1);
                soon().until(() -> store.count() == there);
                broker.kill();
                soon().until(() -> !collector.state().connected());
                broker.startAgain();
                soon().until(() -> collector.state().connected());
            }
            assertEquals(values(150), stored());
            assertEquals(4, collector.state().counts().connections());
        }
    }

    @Test
    void readings_come_over_tls_when_the_broker_shows_a_certificate_of_the_named_authority_only() throws Exception {
        TestAuthority good = TestAuthority.make(folder.resolve("good"));
        TestAuthority other = TestAuthority.make(folder.resolve("other"));
        String lines = """
                cafile %s
                certfile %s
                keyfile %s
                """.formatted(good.authorityFile(), good.certificate(), good.key());
        try (Mosquitto broker = Mosquitto.start(folder.resolve("broker"), lines);
                MqttCollector trusting = collector(secured(broker, good));
                Publisher publisher = new Publisher(secured(broker, good))) {
            soon().until(() -> trusting.state().connected());
            publisher.publish("house/air", MqttCollectorTest.json(1));
            soon().until(() -> store.count() == 1);
            try (MqttCollector doubting = collector(secured(broker, other))) {
                soon().until(() -> doubting.state().says().contains("PKIX path"));
            }
        }
    }

    private static BrokerLink secured(Mosquitto broker, TestAuthority trusted) {
        return new BrokerLink(
                "ssl://127.0.0.1:" + broker.port(), Optional.empty(), Optional.of(trusted.authorityFile()));
    }
}
