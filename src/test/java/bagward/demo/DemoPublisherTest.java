package bagward.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import org.awaitility.Awaitility;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoPublisherTest {
    private static final Path MOSQUITTO = Path.of("/usr/sbin/mosquitto");

    private final List<String> heard = new CopyOnWriteArrayList<>();
    private final DemoClock clock = DemoClock.standing(DemoStation.NOW, 600, DemoStation.ZONE);
    private Process mosquitto;
    private MqttClient listener;
    private String url;

    @BeforeEach
    void start_a_broker_and_listen(@TempDir Path folder) throws Exception {
        assertTrue(Files.isExecutable(MOSQUITTO), "this test needs the Debian package mosquitto");
        int port = freePort();
        url = "tcp://127.0.0.1:" + port;
        Path settings = folder.resolve("mosquitto.conf");
        Files.writeString(
                settings,
                "listener " + port + " 127.0.0.1\nallow_anonymous true\nmax_queued_messages 0\n",
                StandardCharsets.UTF_8);
        mosquitto = new ProcessBuilder(MOSQUITTO.toString(), "-c", settings.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("mosquitto.log").toFile())
                .start();
        listener = new MqttClient(url, "listener", new MemoryPersistence());
        Awaitility.await().atMost(Duration.ofSeconds(10)).ignoreExceptions().until(() -> {
            listener.connect(new MqttConnectOptions());
            return true;
        });
        listener.subscribe(
                "#",
                1,
                (topic, message) -> heard.add(topic + " " + new String(message.getPayload(), StandardCharsets.UTF_8)));
    }

    @AfterEach
    void stop_what_was_started() throws Exception {
        if (listener.isConnected()) {
            listener.disconnectForcibly(100, 100);
            listener.close(true);
        }
        mosquitto.destroy();
        mosquitto.waitFor();
    }

    @Test
    void the_whole_history_and_then_the_live_messages_reach_the_broker_once_each() throws Exception {
        List<String> expected = DemoFeedTest.until(DemoStation.SEED, DemoStation.NOW).stream()
                .map(m -> m.topic() + " " + m.text())
                .toList();
        AtomicInteger ends = new AtomicInteger();
        DemoFeed feed = new DemoFeed(DemoStation.SEED);
        DemoProgress progress = (messages, share) -> ends.addAndGet(share >= 1 ? 1 : 0);
        try (DemoPublisher publisher = new DemoPublisher(DemoBroker.open(url), feed, clock, progress)) {
            assertEquals(DemoStation.NOW, clock.instant(), "the clock stands before the history is out");
            publisher.start();
            assertTrue(publisher.awaitHistory(Duration.ofSeconds(30)), "heard so far " + heard.size());
            Awaitility.await()
                    .atMost(Duration.ofSeconds(20))
                    .until(() -> heard.stream().anyMatch(m -> m.startsWith("mirrenholt/alder-door ")));
            assertTrue(clock.instant().isAfter(DemoStation.NOW), "the clock runs");
        }
        assertEquals(1, ends.get(), "the end of the history is told once");
        assertEquals(expected, List.copyOf(heard).subList(0, expected.size()));
    }

    @Test
    void a_publisher_waits_for_a_broker_that_is_away_and_closes_in_between() throws Exception {
        mosquitto.destroy();
        mosquitto.waitFor();
        DemoPublisher publisher =
                new DemoPublisher(DemoBroker.open(url), new DemoFeed(DemoStation.SEED), clock, (messages, share) -> {});
        publisher.start();
        assertFalse(publisher.awaitHistory(Duration.ofMillis(600)));
        publisher.close();
        assertEquals(DemoStation.NOW, clock.instant(), "no history, no running clock");
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }
}
