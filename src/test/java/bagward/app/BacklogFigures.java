package bagward.app;

import bagward.bag.Line;
import bagward.bag.MaterialId;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.climate.SensorId;
import bagward.collector.Mosquitto;
import bagward.collector.Ports;
import bagward.collector.StationClock;
import bagward.document.Inspection;
import bagward.station.BayId;
import bagward.station.HouseId;
import bagward.station.Spot;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Semaphore;
import org.eclipse.paho.client.mqttv3.IMqttActionListener;
import org.eclipse.paho.client.mqttv3.IMqttToken;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;

/**
 * Measures how long the whole station takes for a backlog of a gateway, and how late a live reading is on the board
 * meanwhile. Run with the test class path; arguments: "embedded", "mosquitto" as it
 * comes or "wide" (mosquitto with a window of 500, as in deploy/mosquitto.conf), sensors, readings of each, and how the sensors
 * are told apart: "one" (all share a session), "gateway" (those of the backlog are behind a gateway, the live one is not) or
 * "same" (the live one is behind that gateway too). With a further "away" the backlog waits at the broker, which then is not the
 * embedded one, when the station starts.
 */
final class BacklogFigures {
    private static final TagCode TAG = new TagCode("T-1");
    private static final int IN_FLIGHT = 100;

    private final Running running;
    private final String url;
    private final int sensors;
    private final int readings;

    private BacklogFigures(Running running, String url, int sensors, int readings) {
        this.running = running;
        this.url = url;
        this.sensors = sensors;
        this.readings = readings;
    }

    public static void main(String[] arguments) throws Exception {
        int sensors = Integer.parseInt(arguments[1]);
        int readings = Integer.parseInt(arguments[2]);
        String lanes = arguments[3];
        boolean away = arguments.length > 4 && arguments[4].equals("away");
        Path folder = Files.createTempDirectory("backlog");
        if (!arguments[0].equals("embedded")) {
            int window = arguments[0].equals("wide") ? 500 : 20;
            try (Mosquitto mosquitto =
                    Mosquitto.start(folder.resolve("mosquitto"), "max_inflight_messages " + window)) {
                String url = mosquitto.link().url();
                String broker = "url: \"" + url.replace("tcp://", "mqtt://") + "\", window: " + window;
                measure(folder, broker, url, sensors, readings, lanes, away);
            }
        } else {
            int port = Ports.free();
            measure(folder, "port: " + port, "tcp://127.0.0.1:" + port, sensors, readings, lanes, away);
        }
    }

    private static void measure(
            Path folder, String broker, String url, int sensors, int readings, String lanes, boolean away)
            throws Exception {
        Configuration configuration = new ConfigurationReader(folder, Map.of())
                .read("backlog.yaml", configuration(broker, sensors, lanes), new Inspection());
        if (away) {
            try (Running before = new Running(configuration, StationClock.trusted(Clock.systemUTC()))) {
                before.open();
                Thread.sleep(5_000);
            }
            backlog(url, sensors, readings);
        }
        try (Running running = new Running(configuration, StationClock.trusted(Clock.systemUTC()))) {
            running.open();
            new BacklogFigures(running, url, sensors, readings).run(away);
        }
    }

    private static String configuration(String broker, int sensors, String lanes) {
        String late = lanes.equals("one") ? "" : "gateway: late, ";
        String live = lanes.equals("same") ? late : "";
        StringBuilder text = new StringBuilder("""
                station: {name: Test bench, latitude: 53.2, longitude: -7.1, time-zone: UTC}
                houses: [{id: north, name: North, bays: [{id: a, name: Bench, spots: 4, across: 2}]}]
                broker: {%s}
                page: {port: 0}
                sensors:
                - {id: spare, house: north, spare: true, every: 1 min, %stopic: t/spare, payload: json, time: /at,
                   reads: [{quantity: temperature, at: /t, unit: Cel}, {quantity: humidity, at: /h, unit: "%%RH"}]}
                """.formatted(broker, live));
        for (int i = 0; i < sensors; i++) {
            text.append("- {id: s")
                    .append(i)
                    .append(", house: north, every: 1 min, ")
                    .append(late)
                    .append("topic: t/s")
                    .append(i);
            text.append(", payload: json, time: /at, reads: [{quantity: temperature, at: /t, unit: Cel}]}\n");
        }
        return text.toString();
    }

    /** @param waits whether the backlog is with the broker already, and on its way since the start */
    private void run(boolean waits) throws Exception {
        long started = System.nanoTime();
        running.watch().change(bag(Instant.now().minus(Duration.ofDays(1))), "figures");
        try (Client client = new Client(url)) {
            if (!waits) {
                sleep(2_000);
                report("calm", probes(client, CompletableFuture.runAsync(() -> sleep(10_000))));
            }
            long before = waits ? 0 : running.messages();
            long begun = waits ? started : System.nanoTime();
            CompletableFuture<Void> sent = waits
                    ? CompletableFuture.completedFuture(null)
                    : CompletableFuture.runAsync(() -> backlog(url, sensors, readings));
            CompletableFuture<Void> absorbed = sent.thenRunAsync(() -> {
                System.out.printf(Locale.ROOT, "with the broker after %.1f s%n", (System.nanoTime() - begun) / 1e9);
                while (running.messages() - before < (long) sensors * readings) {
                    sleep(20);
                }
                double took = (System.nanoTime() - begun) / 1e9;
                System.out.printf(
                        Locale.ROOT,
                        "%d readings on disk after %.1f s: %.0f/s%n",
                        sensors * readings,
                        took,
                        sensors * readings / took);
            });
            report("during the backlog", probes(client, absorbed));
            Runtime runtime = Runtime.getRuntime();
            System.gc();
            System.out.printf("heap in use %d MB%n", (runtime.totalMemory() - runtime.freeMemory()) >> 20);
        }
    }

    private static void report(String when, List<Double> seconds) {
        List<Double> sorted = seconds.stream().sorted().toList();
        System.out.printf(
                Locale.ROOT,
                "%s: a live reading is on the board after %.2f s (median of %d), %.2f s at most%n",
                when,
                sorted.get(sorted.size() / 2),
                sorted.size(),
                sorted.get(sorted.size() - 1));
    }

    /** How late live readings are on the board, one after the other, seconds. */
    private List<Double> probes(Client client, CompletableFuture<Void> until) throws Exception {
        List<Double> late = new ArrayList<>();
        while (!until.isDone() || late.isEmpty()) {
            Instant at = Instant.now().truncatedTo(ChronoUnit.MILLIS);
            long begun = System.nanoTime();
            client.send("t/spare", "{\"at\":\"" + at + "\",\"t\":18,\"h\":70}").waitForCompletion();
            boolean nudged = false;
            while (heard().isBefore(at)) {
                sleep(10);
                if (!nudged && System.nanoTime() - begun > 20e9) {
                    nudged = true;
                    System.out.println("not on the board after 20 s: a second message follows");
                    client.send("t/spare", "{\"at\":\"" + at.minusMillis(1) + "\",\"t\":18,\"h\":70}")
                            .waitForCompletion();
                }
            }
            late.add((System.nanoTime() - begun) / 1e9);
            sleep(300);
        }
        return late;
    }

    private Instant heard() {
        return running.watch().board().sensors().stream()
                .filter(view -> view.sensor().id().value().equals("spare"))
                .flatMap(view -> view.heardAt().stream())
                .findFirst()
                .orElse(Instant.EPOCH);
    }

    private static void backlog(String url, int sensors, int readings) {
        Instant now = Instant.now().truncatedTo(ChronoUnit.SECONDS);
        try (Client client = new Client(url)) {
            Semaphore room = new Semaphore(IN_FLIGHT);
            for (int i = 0; i < readings; i++) {
                Instant at = now.minusSeconds(60L * (readings - i));
                for (int sensor = 0; sensor < sensors; sensor++) {
                    room.acquire();
                    client.send("t/s" + sensor, "{\"at\":\"" + at + "\",\"t\":" + i % 40 + "}", room);
                }
            }
            room.acquire(IN_FLIGHT);
        } catch (MqttException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void sleep(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<RegisterChange> bag(Instant at) {
        Line line = new Line("Test line");
        Pollination pollination = new Pollination(at, "figures", PollinationKind.SELF, 8, Optional.empty());
        Spot spot = new Spot(new HouseId("north"), new BayId("a"), 1);
        return List.of(
                new RegisterChange.PutOn(TAG, at, spot, new MaterialId("paper"), line, line, pollination),
                new RegisterChange.Lend(TAG, at, new SensorId("spare")));
    }

    /** A client that publishes at quality 1. */
    private static final class Client implements AutoCloseable {
        private final MqttAsyncClient client;

        Client(String url) throws MqttException {
            client = new MqttAsyncClient(url, MqttAsyncClient.generateClientId(), new MemoryPersistence());
            MqttConnectOptions options = new MqttConnectOptions();
            options.setMaxInflight(2 * IN_FLIGHT);
            client.connect(options).waitForCompletion();
        }

        IMqttToken send(String topic, String payload) throws MqttException {
            return client.publish(topic, payload.getBytes(StandardCharsets.UTF_8), 1, false);
        }

        void send(String topic, String payload, Semaphore room) throws MqttException {
            client.publish(topic, payload.getBytes(StandardCharsets.UTF_8), 1, false, null, new IMqttActionListener() {
                @Override
                public void onSuccess(IMqttToken token) {
                    room.release();
                }

                @Override
                public void onFailure(IMqttToken token, Throwable why) {
                    throw new IllegalStateException(why);
                }
            });
        }

        @Override
        public void close() throws MqttException {
            client.disconnect().waitForCompletion();
            client.close();
        }
    }
}
