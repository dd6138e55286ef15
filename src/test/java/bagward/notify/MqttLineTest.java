package bagward.notify;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.ActionCard;
import bagward.alarm.Alarm;
import bagward.alarm.AlarmKey;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Priority;
import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.alarm.RuleKind;
import bagward.alarm.Subject;
import bagward.bag.TagCode;
import bagward.board.AlarmView;
import bagward.board.Board;
import bagward.clockwork.HandClock;
import bagward.collector.BrokerLink;
import bagward.collector.Mosquitto;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Our words at a real broker. */
class MqttLineTest {
    private static final DeliverySettings.Mqtt SETTINGS =
            new DeliverySettings.Mqtt("alder/bagward", Duration.ofMillis(200));
    private static final Duration SOON = Duration.ofSeconds(15);

    private final HandClock clock = new HandClock(Letters.NOON);
    private final Map<String, String> heard = new ConcurrentHashMap<>();
    private final List<String> states = new CopyOnWriteArrayList<>();
    private final Mosquitto broker;
    private MqttClient listener;

    MqttLineTest(@TempDir Path folder) throws IOException, MqttException {
        broker = Mosquitto.start(folder);
        listener = listen();
    }

    @BeforeEach
    void nothingIsHeardYet() {
        assertTrue(heard.isEmpty());
    }

    @AfterEach
    void close() throws MqttException {
        listener.disconnectForcibly(0, 100, false);
        listener.close(true);
        broker.close();
    }

    private MqttClient listen() throws MqttException {
        MqttClient client = new MqttClient(broker.link().url(), "listener", new MemoryPersistence());
        client.connect();
        client.subscribe("alder/#", 1, (topic, message) -> {
            heard.put(topic, new String(message.getPayload(), StandardCharsets.UTF_8));
            states.add(topic.endsWith("/alive") ? state() : topic);
        });
        return client;
    }

    private MqttLine line(BrokerLink link) {
        return new MqttLine(link, "test-deliveries", SETTINGS, clock, client -> {});
    }

    private String alive() {
        return heard.getOrDefault("alder/bagward/alive", "{}");
    }

    private String state() {
        try {
            return new ObjectMapper().readTree(alive()).path("state").asText();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void a_sign_of_life_comes_at_regular_times_and_a_farewell_at_the_end() {
        try (MqttLine line = line(broker.link())) {
            line.start();
            await().atMost(SOON).until(() -> state().equals("running"));
            clock.wait(Duration.ofSeconds(30));
            await().atMost(SOON).until(() -> alive().contains("12:00:30"));
        }
        await().atMost(SOON).until(() -> state().equals("stopped"));
    }

    @Test
    void the_broker_says_that_we_are_gone_when_the_connection_breaks_and_we_come_back() throws IOException {
        try (Cable cable = new Cable(URI.create(broker.link().url()).getPort());
                MqttLine line = line(cable.link())) {
            line.start();
            await().atMost(SOON).until(() -> state().equals("running"));
            states.clear();
            cable.cut();
            await().atMost(SOON).until(() -> states.indexOf("gone") >= 0 && state().equals("running"));
        }
    }

    @Test
    void what_is_published_is_with_the_broker_or_refused() throws IOException {
        try (MqttLine line = line(broker.link());
                MqttChannel channel = new MqttChannel(Letters.CHANNEL, line)) {
            assertThrows(DeliveryException.class, () -> channel.hand(Letters.outgoing(Letters.about("T1", "m1"))));
            line.start();
            await().atMost(SOON).until(() -> line.client().isPresent());
            channel.hand(Letters.outgoing(Letters.about("T1", "m1")));
            await().atMost(SOON).until(() -> heard.containsKey("alder/bagward/message/ruth-mail"));
            assertEquals(
                    "m1",
                    new ObjectMapper()
                            .readTree(heard.getOrDefault("alder/bagward/message/ruth-mail", "{}"))
                            .get("id")
                            .asText());
            broker.stop();
            DeliveryException away = assertThrows(
                    DeliveryException.class, () -> channel.hand(Letters.outgoing(Letters.about("T1", "m2"))));
            assertTrue(!away.refused(), away.getMessage());
            broker.startAgain();
            await().atMost(SOON).until(() -> line.client().isPresent());
            channel.hand(Letters.outgoing(Letters.about("T1", "m2")));
        }
    }

    @Test
    void what_an_earlier_run_left_under_our_topics_is_cleared_and_what_holds_is_there_again_after_an_outage()
            throws Exception {
        listener.publish("alder/bagward/alarm/bag-damp/bag/GONE", "{}".getBytes(StandardCharsets.UTF_8), 1, true);
        Board board = new Board(
                clock.instant(),
                "Alder Bank",
                ZoneOffset.UTC,
                List.of(),
                List.of(),
                List.of(),
                List.of(damp()),
                Optional.empty());
        StatePublisher states = new StatePublisher(SETTINGS.topic());
        try (MqttLine line = new MqttLine(broker.link(), "test-deliveries", SETTINGS, clock, states)) {
            line.start();
            await().atMost(SOON).until(() -> shown(states, board, line, "alder/bagward/alarm/bag-damp/bag/GONE", ""));
            String here = "alder/bagward/alarm/bag-damp/bag/T1";
            assertTrue(heard.getOrDefault(here, "").contains("\"state\":\"unacknowledged\""), heard::toString);
            broker.stop();
            broker.startAgain();
            await().atMost(SOON).until(() -> line.client().isPresent());
            listener = listen();
            listener.publish(here, new byte[0], 1, true);
            broker.stop();
            broker.startAgain();
            listener = listen();
            heard.clear();
            await().atMost(SOON).until(() -> {
                states.show(board, line);
                return heard.getOrDefault(here, "").contains("unacknowledged");
            });
        }
    }

    private boolean shown(StatePublisher states, Board board, MqttLine line, String topic, String json) {
        states.show(board, line);
        return json.equals(heard.get(topic));
    }

    private static AlarmView damp() {
        Rule rule = new Rule(
                new RuleId("bag-damp"),
                "Damp",
                RuleKind.BAG_DAMP,
                90,
                2,
                Duration.ZERO,
                Duration.ZERO,
                Priority.HIGH,
                new ActionCard("Look.", "It moulds.", "Now.", "It dries.", ""));
        AlarmKey key = new AlarmKey(rule.id(), new Subject.Bag(new TagCode("T1")));
        Alarm alarm = new Alarm(
                key,
                AlarmPhase.UNACKNOWLEDGED,
                Letters.NOON,
                Optional.of(Letters.NOON),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "damp");
        return new AlarmView(alarm, rule, Optional.empty());
    }

    /** A cable to the broker that can be cut without a farewell. */
    private static final class Cable implements AutoCloseable {
        private final ServerSocket here = new ServerSocket(0, 10, InetAddress.getLoopbackAddress());
        private final List<Socket> ends = new CopyOnWriteArrayList<>();
        private final int port;

        Cable(int port) throws IOException {
            this.port = port;
            thread(this::accept);
        }

        BrokerLink link() {
            return new BrokerLink("tcp://127.0.0.1:" + here.getLocalPort(), Optional.empty(), Optional.empty());
        }

        private static void thread(Runnable work) {
            Thread thread = new Thread(work, "cable");
            thread.setDaemon(true);
            thread.start();
        }

        private void accept() {
            try {
                while (!here.isClosed()) {
                    Socket near = here.accept();
                    Socket far = new Socket(InetAddress.getLoopbackAddress(), port);
                    ends.add(near);
                    ends.add(far);
                    thread(() -> carry(near, far));
                    thread(() -> carry(far, near));
                }
            } catch (IOException e) {
                ends.clear();
            }
        }

        private static void carry(Socket from, Socket to) {
            try (from;
                    to) {
                from.getInputStream().transferTo(to.getOutputStream());
            } catch (IOException e) {
                Thread.currentThread().setName("cable, cut");
            }
        }

        void cut() throws IOException {
            for (Socket end : ends) {
                end.close();
            }
            ends.clear();
        }

        @Override
        public void close() throws IOException {
            here.close();
            cut();
        }
    }
}
