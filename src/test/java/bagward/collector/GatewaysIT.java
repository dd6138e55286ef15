package bagward.collector;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.collector.payload.BareNumber;
import bagward.collector.payload.MeasureUnit;
import bagward.collector.payload.MessageDecoder;
import bagward.collector.payload.Place;
import bagward.collector.payload.SensorSource;
import bagward.collector.payload.TopicFilter;
import bagward.store.ReadingStore;
import bagward.units.Quantity;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;
import org.awaitility.core.ConditionFactory;
import org.eclipse.paho.client.mqttv3.IMqttToken;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Gateways with sessions of their own. Readings have no time of their own, so that one that is taken twice shows. */
class GatewaysIT {
    private static final CollectorSettings SETTINGS = new CollectorSettings(
            "bagward",
            20,
            Duration.ofMillis(20),
            Duration.ofMinutes(5),
            MessageDecoder.USUAL_PAST_TOLERANCE,
            false,
            List.of(),
            true);

    private static final int BACKLOG = 400;

    private final Path folder;
    private final MemoryStore store = new MemoryStore();

    GatewaysIT(@TempDir Path folder) {
        this.folder = folder;
    }

    private static SensorSource sensor(String id, String gateway) {
        return new SensorSource(
                new SensorId(id),
                new TopicFilter("t/" + id),
                new BareNumber(Place.of(Quantity.TEMPERATURE, "", MeasureUnit.CELSIUS)),
                gateway.isEmpty() ? Optional.empty() : Optional.of(gateway));
    }

    private MqttCollector collector(TestBroker broker, ReadingStore readings, SensorSource... sources) {
        MqttCollector collector = new MqttCollector(
                StationClock.trusted(Clock.systemUTC()),
                broker.settings(),
                SETTINGS,
                List.of(sources),
                readings,
                store,
                store,
                told -> {});
        collector.start();
        soon().until(() -> collector.state().connected());
        return collector;
    }

    private MqttCollector collector(TestBroker broker, SensorSource... sources) {
        return collector(broker, store, sources);
    }

    private static ConditionFactory soon() {
        return await().atMost(Duration.ofSeconds(40)).pollInterval(Duration.ofMillis(10));
    }

    private static String value(int number) {
        return Double.toString(number / 100.0);
    }

    private List<Double> values(String sensor) {
        SeriesId series = new SeriesId(new SensorId(sensor), Quantity.TEMPERATURE);
        return store.readings(series, Instant.EPOCH, Instant.MAX).stream()
                .map(Reading::value)
                .toList();
    }

    private static List<Double> upTo(int count) {
        return IntStream.range(0, count).mapToObj(i -> i / 100.0).toList();
    }

    private static String gatewayClient() {
        return Lanes.of("bagward", List.of(sensor("late", "gw"))).all().get(1).clientId();
    }

    private static void publish(TestBroker broker, String sensor, int from, int to) throws MqttException {
        try (Publisher publisher = new Publisher(broker.settings().link())) {
            for (int i = from; i < to; i++) {
                publisher.publish("t/" + sensor, value(i));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void a_live_reading_does_not_wait_behind_the_backlog_of_a_gateway(TestBroker.Kind kind) throws Exception {
        SensorSource[] sources = {sensor("late", "gw"), sensor("live", "")};
        try (TestBroker broker = kind.start(folder)) {
            collector(broker, sources).close();
            publish(broker, "late", 0, BACKLOG);
            publish(broker, "live", 0, 1);
            try (MqttCollector collector = collector(broker, new Slow(store), sources)) {
                soon().until(() -> !values("live").isEmpty());
                int before = values("late").size();
                assertTrue(before < BACKLOG / 2, before + " of the backlog came before the live one");
                soon().until(() -> values("late").size() == BACKLOG);
                assertEquals(upTo(BACKLOG), values("late"), "in the order in which they were sent");
                assertEquals(2, collector.sessions().size());
            }
        }
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void topics_that_move_to_a_session_of_their_own_lose_and_double_nothing(TestBroker.Kind kind) throws Exception {
        try (TestBroker broker = kind.start(folder)) {
            collector(broker, sensor("late", ""), sensor("live", "")).close();
            publish(broker, "late", 0, BACKLOG);
            AtomicBoolean enough = new AtomicBoolean();
            CompletableFuture<Integer> published =
                    CompletableFuture.supplyAsync(() -> publishUntil(broker, "late", BACKLOG, enough));
            try (MqttCollector collector = collector(broker, sensor("late", "gw"), sensor("live", ""))) {
                soon().until(() ->
                        held().equals(Map.of("bagward", Set.of("t/live"), gatewayClient(), Set.of("t/late"))));
                int atMove = values("late").size();
                soon().until(() -> values("late").size() > atMove + 50);
                enough.set(true);
                int count = published.get();
                soon().until(() -> values("late").size() >= count);
                assertEquals(upTo(count), values("late"));
                assertTrue(collector.state().well(), collector.state().says());
            } finally {
                enough.set(true);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void a_session_whose_gateway_is_not_configured_any_more_is_emptied_and_ended(TestBroker.Kind kind)
            throws Exception {
        try (TestBroker broker = kind.start(folder)) {
            collector(broker, sensor("late", "gw"), sensor("live", "")).close();
            publish(broker, "late", 0, BACKLOG);
            try (MqttCollector collector = collector(broker, sensor("late", ""), sensor("live", ""))) {
                soon().until(() -> held().equals(Map.of("bagward", Set.of("t/live", "t/late"))));
                soon().until(() -> collector.sessions().size() == 1);
                publish(broker, "late", BACKLOG, BACKLOG + 10);
                soon().until(() -> values("late").size() == BACKLOG + 10);
                assertEquals(upTo(BACKLOG + 10), values("late"));
            }
            assertFalse(sessionAtBroker(broker, gatewayClient()), "the broker still keeps it");
        }
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void what_a_process_that_died_while_it_moved_topics_left_in_two_sessions_is_stored_once(TestBroker.Kind kind)
            throws Exception {
        try (TestBroker broker = kind.start(folder)) {
            collector(broker, sensor("late", ""), sensor("live", "")).close();
            store.hold(broker.settings().name(), gatewayClient(), List.of("t/late"));
            subscribeAs(broker, gatewayClient(), "t/late");
            publish(broker, "late", 0, 15);
            try (MqttCollector collector = collector(broker, sensor("late", "gw"), sensor("live", ""))) {
                soon().until(() ->
                        held().equals(Map.of("bagward", Set.of("t/live"), gatewayClient(), Set.of("t/late"))));
                publish(broker, "late", 15, 20);
                soon().until(() -> values("late").size() >= 20);
                soon().until(() -> collector.state().counts().messages() == 20);
                assertEquals(upTo(20), values("late"));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(value = TestBroker.Kind.class, names = "MOSQUITTO")
    void a_topic_that_left_the_configuration_is_not_sent_any_more(TestBroker.Kind kind) throws Exception {
        try (TestBroker broker = kind.start(folder)) {
            collector(broker, sensor("late", ""), sensor("live", "")).close();
            try (MqttCollector collector = collector(broker, sensor("live", ""))) {
                soon().until(() -> held().equals(Map.of("bagward", Set.of("t/live"))));
                publish(broker, "late", 0, 5);
                publish(broker, "live", 0, 5);
                soon().until(() -> values("live").size() == 5);
                assertEquals(0, collector.state().counts().heard());
            }
        }
    }

    private Map<String, Set<String>> held() {
        return store.held("");
    }

    private static int publishUntil(TestBroker broker, String sensor, int from, AtomicBoolean enough) {
        try (Publisher publisher = new Publisher(broker.settings().link())) {
            int number = from;
            while (!enough.get()) {
                publisher.publish("t/" + sensor, value(number));
                number++;
                Thread.sleep(15);
            }
            return number;
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private static boolean sessionAtBroker(TestBroker broker, String client) throws MqttException {
        MqttAsyncClient asking = broker.settings().link().client(client);
        try {
            IMqttToken connected = asking.connect(broker.settings().link().connectOptions(true));
            connected.waitForCompletion(10_000);
            return connected.getSessionPresent();
        } finally {
            asking.disconnect().waitForCompletion(10_000);
            asking.close(true);
        }
    }

    private static void subscribeAs(TestBroker broker, String client, String topic) throws MqttException {
        MqttAsyncClient subscriber = broker.settings().link().client(client);
        subscriber.connect(broker.settings().link().connectOptions(true)).waitForCompletion(10_000);
        subscriber.subscribe(topic, 1).waitForCompletion(10_000);
        subscriber.disconnect().waitForCompletion(10_000);
        subscriber.close(true);
    }

    /** Takes a batch of the backlog only slowly, as a small computer would. */
    private record Slow(ReadingStore real) implements ReadingStore {
        @Override
        public Receipt append(List<Reading> batch) {
            try {
                Thread.sleep(20);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            return real.append(batch);
        }

        @Override
        public List<Reading> readings(SeriesId series, Instant from, Instant to) {
            return real.readings(series, from, to);
        }

        @Override
        public Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
            return real.newest(series, atOrBefore);
        }
    }
}
