package bagward.collector;

import bagward.store.ReadingStore;
import bagward.store.SqliteStores;
import bagward.store.influx.InfluxReadings;
import bagward.store.influx.InfluxServer;
import bagward.store.influx.InfluxSettings;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.eclipse.paho.client.mqttv3.IMqttActionListener;
import org.eclipse.paho.client.mqttv3.IMqttToken;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;

/**
 * Measures durable readings a second from publisher to disk in both stores, beside a bare client that acknowledges and
 * discards on the same broker. Run with the test classpath; argument: number of messages.
 */
final class CollectorRate {
    private static final int IN_FLIGHT = 200;

    private CollectorRate() {}

    public static void main(String[] arguments) throws Exception {
        int messages = Integer.parseInt(arguments[0]);
        for (TestBroker.Kind kind : TestBroker.Kind.values()) {
            for (int round = 0; round < 3; round++) {
                double bare = bare(kind, messages);
                double collector = embedded(kind, messages, false);
                double hearing = embedded(kind, messages, true);
                double influx = influx(kind, messages);
                System.out.printf(
                        Locale.ROOT,
                        "%s round %d: bare %.0f/s, collector %.0f/s (ratio %.2f), hearing all topics %.0f/s (ratio %.2f), InfluxDB %.0f/s (ratio %.2f)%n",
                        kind,
                        round + 1,
                        bare,
                        collector,
                        collector / bare,
                        hearing,
                        hearing / bare,
                        influx,
                        influx / bare);
            }
        }
    }

    private static double bare(TestBroker.Kind kind, int messages) throws Exception {
        try (TestBroker broker = kind.start(Files.createTempDirectory("rate"))) {
            BrokerLink link = broker.settings().link();
            MqttAsyncClient client = link.client("bare");
            CountDownLatch all = new CountDownLatch(messages);
            MqttConnectOptions options = link.connectOptions(true);
            client.connect(options).waitForCompletion();
            client.subscribe("house/air", 1, (topic, message) -> all.countDown())
                    .waitForCompletion();
            long began = System.nanoTime();
            publish(link, messages);
            all.await();
            double rate = messages / ((System.nanoTime() - began) / 1e9);
            client.disconnect().waitForCompletion();
            client.close();
            return rate;
        }
    }

    private static double embedded(TestBroker.Kind kind, int messages, boolean hearAll) throws Exception {
        return collector(kind, messages, hearAll, SqliteStores::readings);
    }

    private static double influx(TestBroker.Kind kind, int messages) throws Exception {
        try (InfluxServer server = InfluxServer.start(Files.createTempDirectory("rate"))) {
            InfluxSettings settings =
                    new InfluxSettings(server.url(), "rate", Optional.empty(), Optional.empty(), Optional.empty());
            return collector(
                    kind,
                    messages,
                    false,
                    stores -> InfluxReadings.open(settings, stores.quarantine(), Clock.systemUTC()));
        }
    }

    private static double collector(
            TestBroker.Kind kind, int messages, boolean hearAll, Function<SqliteStores, ReadingStore> readings)
            throws Exception {
        Path folder = Files.createTempDirectory("rate");
        CollectorSettings usual = CollectorSettings.USUAL;
        CollectorSettings settings = new CollectorSettings(
                usual.clientId(),
                usual.batchMost(),
                usual.batchLinger(),
                usual.futureTolerance(),
                usual.pastTolerance(),
                hearAll,
                List.of(),
                false);
        CountDownLatch all = new CountDownLatch(messages);
        try (TestBroker broker = kind.start(folder.resolve("broker"));
                SqliteStores stores = SqliteStores.open(folder.resolve("bagward.db"), Clock.systemUTC());
                MqttCollector collector = new MqttCollector(
                        StationClock.trusted(Clock.systemUTC()),
                        broker.settings(),
                        settings,
                        MqttCollectorTest.SOURCES,
                        readings.apply(stores),
                        stores.quarantine(),
                        stores.subscriptions(),
                        stored -> stored.forEach(r -> all.countDown()))) {
            collector.start();
            while (!collector.state().connected()) {
                Thread.sleep(10);
            }
            Thread.sleep(500);
            long began = System.nanoTime();
            publish(broker.settings().link(), messages);
            all.await();
            return messages / ((System.nanoTime() - began) / 1e9);
        }
    }

    private static void publish(BrokerLink link, int messages) throws MqttException, InterruptedException {
        MqttAsyncClient client = link.client("rate-publisher");
        MqttConnectOptions options = link.connectOptions(false);
        options.setMaxInflight(2 * IN_FLIGHT);
        client.connect(options).waitForCompletion();
        Semaphore room = new Semaphore(IN_FLIGHT);
        AtomicInteger failed = new AtomicInteger();
        IMqttActionListener done = new IMqttActionListener() {
            @Override
            public void onSuccess(IMqttToken token) {
                room.release();
            }

            @Override
            public void onFailure(IMqttToken token, Throwable why) {
                failed.incrementAndGet();
                room.release();
            }
        };
        long second = Instant.now().getEpochSecond() - messages;
        for (int i = 0; i < messages; i++) {
            room.acquire();
            byte[] payload = ("{\"t\":21.5,\"at\":" + (second + i) + "}").getBytes(StandardCharsets.UTF_8);
            client.publish("house/air", payload, 1, false, null, done);
        }
        room.acquire(IN_FLIGHT);
        client.disconnect().waitForCompletion();
        client.close();
        if (failed.get() > 0) {
            throw new IllegalStateException(failed.get() + " messages were not taken");
        }
    }
}
