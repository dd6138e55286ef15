package bagward.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertIterableEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.collector.BrokerLink;
import bagward.collector.BrokerSettings;
import bagward.collector.EmbeddedBroker;
import bagward.collector.Mosquitto;
import bagward.collector.Ports;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.awaitility.Awaitility;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoPublisherTest {
    private static final Duration HALF_A_MINUTE = Duration.ofSeconds(30);

    private final Queue<String> heard = new ConcurrentLinkedQueue<>();
    private final DemoClock clock = DemoClock.standing(DemoStation.NOW, 600, DemoStation.ZONE);
    private final AtomicInteger ends = new AtomicInteger();

    @Test
    void mosquitto_gets_the_whole_history_and_then_the_live_messages(@TempDir Path folder) throws Exception {
        try (Mosquitto mosquitto = Mosquitto.start(folder, "autosave_on_changes false")) {
            hear_all_of_it_from(mosquitto.link());
        }
    }

    @Test
    void the_broker_inside_the_program_gets_them_too(@TempDir Path folder) throws Exception {
        try (EmbeddedBroker broker =
                EmbeddedBroker.start(BrokerSettings.Embedded.onThisMachine(folder, Ports.free()))) {
            hear_all_of_it_from(broker.link());
        }
    }

    @Test
    void a_publisher_waits_for_a_broker_that_is_away_and_closes_in_between() throws Exception {
        BrokerLink nobody = new BrokerLink("tcp://127.0.0.1:" + Ports.free(), Optional.empty(), Optional.empty());
        DemoPublisher publisher = publisher(nobody);
        publisher.start();
        assertFalse(publisher.awaitHistory(Duration.ofMillis(600)));
        publisher.close();
        assertEquals(DemoStation.NOW, clock.instant(), "no history, no running clock");
    }

    private void hear_all_of_it_from(BrokerLink broker) throws Exception {
        Map<String, List<String>> expected = byTopic(
                DemoFeedTest.until(DemoStation.SEED, DemoStation.NOW).stream().map(m -> m.topic() + " " + m.text()));
        MqttAsyncClient listener = listen(broker);
        try (DemoPublisher publisher = publisher(broker)) {
            assertEquals(DemoStation.NOW, clock.instant(), "the clock stands before the history is out");
            publisher.start();
            assertTrue(publisher.awaitHistory(HALF_A_MINUTE), () -> "heard so far " + heard.size());
            Awaitility.await("a live message")
                    .atMost(HALF_A_MINUTE)
                    .until(() -> heard.stream().anyMatch(m -> m.startsWith("mirrenholt/alder-door ")));
            assertTrue(clock.instant().isAfter(DemoStation.NOW), "the clock runs");
            Awaitility.await("all of the history")
                    .atMost(HALF_A_MINUTE)
                    .untilAsserted(() -> assertEquals(
                            expected.keySet(), heardBegins(expected).keySet()));
        } finally {
            listener.disconnectForcibly(100, 100);
            listener.close(true);
        }
        assertEquals(1, ends.get(), "the end of the history is told once");
        Map<String, List<String>> heardOfEach = heardBegins(expected);
        assertEquals(expected.keySet(), heardOfEach.keySet());
        heardOfEach.forEach((topic, messages) ->
                assertIterableEquals(sorted(expected.getOrDefault(topic, List.of())), sorted(messages)));
    }

    /**
     * Nothing in the program relies on the order of messages, and the broker inside it was seen, on a busy machine, to hand
     * over the first message of a topic after the others.
     */
    private static List<String> sorted(List<String> messages) {
        return messages.stream().sorted().toList();
    }

    private static Map<String, List<String>> byTopic(Stream<String> messages) {
        return messages.collect(Collectors.groupingBy(
                message -> message.substring(0, message.indexOf(' ')), TreeMap::new, Collectors.toList()));
    }

    /** What was heard, of each topic as many as expected; topics with fewer so far are left out. */
    private Map<String, List<String>> heardBegins(Map<String, List<String>> expected) {
        Map<String, List<String>> begins = new TreeMap<>();
        byTopic(heard.stream()).forEach((topic, messages) -> {
            int count = expected.getOrDefault(topic, List.of()).size();
            if (count > 0 && messages.size() >= count) {
                begins.put(topic, messages.subList(0, count));
            }
        });
        return begins;
    }

    private DemoPublisher publisher(BrokerLink broker) {
        return new DemoPublisher(
                broker, new DemoFeed(DemoStation.SEED), clock, (messages, share) -> ends.addAndGet(share >= 1 ? 1 : 0));
    }

    private MqttAsyncClient listen(BrokerLink broker) throws MqttException {
        MqttAsyncClient listener = broker.client("listener");
        listener.connect(broker.connectOptions(false)).waitForCompletion();
        listener.subscribe(
                        "mirrenholt/#",
                        1,
                        (topic, message) ->
                                heard.add(topic + " " + new String(message.getPayload(), StandardCharsets.UTF_8)))
                .waitForCompletion();
        return listener;
    }
}
