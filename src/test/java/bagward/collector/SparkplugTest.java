package bagward.collector;

import static bagward.collector.sparkplug.Tahu.birth;
import static bagward.collector.sparkplug.Tahu.data;
import static bagward.collector.sparkplug.Tahu.payload;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.collector.payload.MeasureUnit;
import bagward.collector.payload.Place;
import bagward.collector.payload.SensorSource;
import bagward.collector.payload.SparkplugDevice;
import bagward.collector.sparkplug.NodeId;
import bagward.collector.sparkplug.Tahu;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.eclipse.paho.client.mqttv3.IMqttMessageListener;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.tahu.message.model.Metric;
import org.eclipse.tahu.message.model.MetricDataType;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A gateway that speaks Sparkplug B, encoded by Eclipse Tahu, over both brokers into the store. */
class SparkplugTest extends CollectorStage {
    private static final SensorId AIR = new SensorId("air");
    private static final SeriesId TEMPERATURE = new SeriesId(AIR, Quantity.TEMPERATURE);
    private static final SeriesId HUMIDITY = new SeriesId(AIR, Quantity.HUMIDITY);
    private static final String NODE = "spBv1.0/alder/%s/gateway";

    private static final SparkplugDevice FORMAT = new SparkplugDevice(
            new NodeId("alder", "gateway"),
            Optional.of("th-1"),
            List.of(
                    Place.of(Quantity.TEMPERATURE, "Air/Temperature", MeasureUnit.CELSIUS),
                    Place.of(Quantity.HUMIDITY, "Air/Humidity", MeasureUnit.PERCENT_HUMIDITY)));

    private final long now = System.currentTimeMillis();

    private MqttCollector collector(TestBroker broker) {
        return collector(broker, CollectorSettings.USUAL, List.of(new SensorSource(AIR, FORMAT.topics(), FORMAT)));
    }

    /** An edge node as the standard has it: a death as its will, births when it comes and when it is asked. */
    private final class EdgeNode implements AutoCloseable {
        private final MqttAsyncClient client;
        private final ConcurrentLinkedQueue<String> commands = new ConcurrentLinkedQueue<>();
        private long sequence;

        EdgeNode(BrokerLink link) throws MqttException {
            client = link.client("edge-" + System.nanoTime());
            MqttConnectOptions options = link.connectOptions(false);
            options.setWill(NODE.formatted("NDEATH"), Tahu.death(0, now), 1, false);
            client.connect(options).waitForCompletion(10_000);
            IMqttMessageListener heard = (topic, message) -> commands.add(topic);
            client.subscribe(NODE.formatted("NCMD"), 1, null, null, heard).waitForCompletion(10_000);
        }

        void births() throws MqttException {
            sequence = 0;
            send(
                    "NBIRTH",
                    "",
                    payload(
                            sequence++,
                            now,
                            true,
                            Tahu.named("bdSeq", MetricDataType.Int64, 0L, now),
                            Tahu.named("Node Control/Rebirth", MetricDataType.Boolean, false, now)));
            send(
                    "DBIRTH",
                    "/th-1",
                    payload(
                            sequence++,
                            now,
                            true,
                            birth("Air/Temperature", 1, MetricDataType.Float, 21.5f, now - 9000),
                            birth("Air/Humidity", 2, MetricDataType.UInt8, (short) 80, now - 9000)));
        }

        void data(Metric... metrics) throws MqttException {
            send("DDATA", "/th-1", payload(sequence++, now, false, metrics));
        }

        void loseOne() {
            sequence++;
        }

        void send(String type, String device, byte[] bytes) throws MqttException {
            client.publish(NODE.formatted(type) + device, bytes, 0, false).waitForCompletion(10_000);
        }

        /** Away without a goodbye, so that the broker sends the will. */
        void breakDown() throws MqttException {
            client.disconnectForcibly(0, 1, false);
        }

        @Override
        public void close() throws MqttException {
            if (client.isConnected()) {
                breakDown();
            }
            client.close(true);
        }
    }

    private List<Double> values(SeriesId series) {
        return store.all().stream()
                .filter(r -> r.series().equals(series))
                .map(Reading::value)
                .toList();
    }

    private List<String> reasons() {
        return store.newestQuarantined(100).stream().map(q -> q.reason()).toList();
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void births_and_data_by_alias_are_stored_at_the_times_of_their_metrics(TestBroker.Kind kind) throws Exception {
        try (TestBroker broker = kind.start(folder);
                MqttCollector collector = collector(broker);
                EdgeNode edge = new EdgeNode(broker.settings().link())) {
            soon().until(() -> collector.state().connected());
            edge.births();
            edge.data(data(1, MetricDataType.Float, 21.7f, now - 5000), data(2, MetricDataType.UInt8, (short) 82, now));
            edge.data(data(1, MetricDataType.Float, null, now - 4000));
            edge.data(Tahu.historical(1, 19.5f, now - Duration.ofDays(2).toMillis()));
            soon().until(() -> store.count() == 5);
            assertEquals(List.of(19.5, 21.5, 21.7), values(TEMPERATURE));
            assertEquals(List.of(80.0, 82.0), values(HUMIDITY));
            assertEquals(
                    Instant.ofEpochMilli(now - 5000),
                    store.newest(TEMPERATURE, Instant.MAX).orElseThrow().measuredAt());
            assertEquals(List.of(), reasons());
            assertEquals(0, collector.edgeNodes().get(0).missed());
        }
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void an_unknown_alias_goes_to_quarantine_and_the_births_are_asked_for_and_then_it_is_known(TestBroker.Kind kind)
            throws Exception {
        try (TestBroker broker = kind.start(folder);
                EdgeNode edge = new EdgeNode(broker.settings().link());
                MqttCollector collector = collector(broker)) {
            soon().until(() -> collector.state().connected());
            edge.data(data(1, MetricDataType.Float, 21.7f, now));
            soon().until(() -> reasons().size() == 1);
            assertEquals(
                    "air: no birth that was heard names the alias 1", reasons().get(0));
            soon().until(() -> Set.copyOf(edge.commands).equals(Set.of(NODE.formatted("NCMD"))));
            edge.births();
            edge.data(data(1, MetricDataType.Float, 21.9f, now));
            soon().until(() -> values(TEMPERATURE).equals(List.of(21.5, 21.9)));
        }
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void the_death_of_the_edge_node_says_that_its_sensors_are_offline_and_is_no_reading(TestBroker.Kind kind)
            throws Exception {
        try (TestBroker broker = kind.start(folder);
                MqttCollector collector = collector(broker);
                EdgeNode edge = new EdgeNode(broker.settings().link())) {
            soon().until(() -> collector.state().connected());
            edge.births();
            soon().until(() -> store.count() == 2);
            assertEquals(Map.of(), collector.offline());
            edge.breakDown();
            soon().until(() -> collector.offline().containsKey(AIR));
            assertEquals(2, store.count());
            assertEquals(List.of(), reasons());
        }
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void what_was_missed_is_counted_and_what_is_damaged_is_refused(TestBroker.Kind kind) throws Exception {
        try (TestBroker broker = kind.start(folder);
                MqttCollector collector = collector(broker);
                EdgeNode edge = new EdgeNode(broker.settings().link())) {
            soon().until(() -> collector.state().connected());
            edge.births();
            edge.loseOne();
            edge.data(data(1, MetricDataType.Float, 22.1f, now));
            soon().until(() -> store.count() == 3);
            assertEquals(1, collector.edgeNodes().get(0).missed());
            edge.send("DDATA", "/th-1", new byte[] {0x12, 9, 1});
            soon().until(() -> reasons().size() == 1);
            assertTrue(reasons().get(0).contains("not readable as a Sparkplug B payload"), reasons()::toString);
        }
    }
}
