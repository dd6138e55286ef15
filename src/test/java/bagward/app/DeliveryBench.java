package bagward.app;

import bagward.bag.Line;
import bagward.bag.MaterialId;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.collector.Ports;
import bagward.collector.StationClock;
import bagward.document.Inspection;
import bagward.station.BayId;
import bagward.station.HouseId;
import bagward.station.Spot;
import bagward.watch.Watch;
import bagward.watch.WatchSettings;
import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import org.awaitility.Awaitility;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;

/** A whole running station with its broker, a sensor that speaks, a real mail server and a real web server. */
final class DeliveryBench implements AutoCloseable {
    /** Wet as soon as it is damp; the only rule of the bench that is high and has no delay. */
    static final String DAMP_NOW = """
            rules:
            - id: damp-now
              name: Damp now
              watches: bag-damp
              limit: 90
              deadband: 2
              priority: high
              card: {what: Look, why: Test, how-soon: Now, proof: Dry}
            """;

    private final BlockingQueue<String> posts = new LinkedBlockingQueue<>();
    private final GreenMail mail = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
    private final HttpServer web;
    private final Running running;
    private final MqttClient sensor;

    /**
     * Starts everything, and waits until the collector is connected.
     *
     * @param text houses, rules, people and sensors of the configuration
     * @param follow whether the channel "hook" gets the lines of the journal
     */
    DeliveryBench(Path folder, Clock clock, WatchSettings settings, String text, boolean follow) throws Exception {
        mail.start();
        web = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        web.createContext("/hook", this::post);
        web.start();
        int broker = Ports.free();
        int pages = Ports.free();
        String whole = """
                station: {name: Test bench, latitude: 53.2, longitude: -7.1, time-zone: UTC}
                broker: {port: %d}
                page: {port: %d}
                deliveries:
                  public-address: http://127.0.0.1:%d
                  mail: {host: 127.0.0.1, port: %d, security: none, from: bagward@example.org}
                  channels:
                  - {name: mail, kind: mail, to: ruth@example.org}
                  - {name: hook, kind: webhook, url: "http://127.0.0.1:%d/hook", secret-from: HOOK_SECRET, follow: %b}
                """.formatted(
                                broker,
                                pages,
                                pages,
                                mail.getSmtp().getPort(),
                                web.getAddress().getPort(),
                                follow)
                + text;
        Map<String, String> secrets = Map.of("HOOK_SECRET", "MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw");
        Configuration configuration =
                new ConfigurationReader(folder, secrets).read("bench.yaml", whole, new Inspection());
        running = new Running(configuration, StationClock.trusted(clock), settings);
        running.open();
        Awaitility.await().atMost(Duration.ofSeconds(30)).until(this::collecting);
        sensor = new MqttClient("tcp://127.0.0.1:" + broker, "bench-sensor", new MemoryPersistence());
        sensor.connect();
    }

    private boolean collecting() {
        return watch().health().parts().stream().anyMatch(part -> part.name().equals("collector") && part.well());
    }

    private void post(HttpExchange exchange) throws IOException {
        posts.add(new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8));
        exchange.sendResponseHeaders(204, -1);
        exchange.close();
    }

    /** What was posted to the webhook, oldest first. */
    BlockingQueue<String> posts() {
        return posts;
    }

    GreenMail mail() {
        return mail;
    }

    Watch watch() {
        return running.watch();
    }

    /** A sensor of the bench says what it measured; returns when the broker has it. */
    void publish(String topic, Instant at, double humidity) throws MqttException {
        byte[] payload = ("{\"at\":\"" + at + "\",\"t\":18,\"h\":" + humidity + "}").getBytes(StandardCharsets.UTF_8);
        sensor.publish(topic, payload, 1, false);
    }

    /** How a sensor of the bench is configured. */
    static String sensor(String id, boolean spare) {
        return """
                - id: %1$s
                  house: north
                  spare: %2$b
                  every: 1 min
                  topic: t/%1$s
                  payload: json
                  time: /at
                  reads: [{quantity: temperature, at: /t, unit: Cel}, {quantity: humidity, at: /h, unit: "%%RH"}]
                """.formatted(id, spare);
    }

    /** A paper bag on the bench "a". */
    static RegisterChange bag(String tag, int spot, Instant at) {
        Line line = new Line("Test line");
        Pollination pollination = new Pollination(at, "tester", PollinationKind.SELF, 8, Optional.empty());
        Spot place = new Spot(new HouseId("north"), new BayId("a"), spot);
        return new RegisterChange.PutOn(new TagCode(tag), at, place, new MaterialId("paper"), line, line, pollination);
    }

    /** How many alarms of the rule nobody has seen. */
    long unseen() {
        return watch().board().alarms().stream()
                .filter(view -> view.alarm().acknowledgedAt().isEmpty())
                .filter(view -> view.rule().id().value().equals("damp-now"))
                .count();
    }

    /** Opens the page of a link as a mail program does. */
    static int look(URI link) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(link).build(), BodyHandlers.discarding())
                .statusCode();
    }

    /** Presses the button on the page of a link. */
    static int press(URI link) throws IOException, InterruptedException {
        HttpRequest press = HttpRequest.newBuilder(link)
                .header("Origin", "http://" + link.getAuthority())
                .POST(HttpRequest.BodyPublishers.noBody())
                .build();
        return HttpClient.newHttpClient().send(press, BodyHandlers.discarding()).statusCode();
    }

    @Override
    public void close() throws MqttException {
        sensor.disconnect();
        sensor.close();
        running.close();
        mail.stop();
        web.stop(0);
    }
}
