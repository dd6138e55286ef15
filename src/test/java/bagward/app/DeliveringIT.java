package bagward.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.Line;
import bagward.bag.MaterialId;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.climate.SensorId;
import bagward.collector.Ports;
import bagward.collector.StationClock;
import bagward.document.Inspection;
import bagward.station.BayId;
import bagward.station.HouseId;
import bagward.station.Spot;
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
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.awaitility.Awaitility;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The whole chain: readings in a broker become an alarm, a mail in a real mail server, and its link confirms the alarm. How
 * long it takes to hand over is measured at a program that follows the journal, since messages to people are bundled.
 * BAGWARD_DELAYS says how many bags are measured one after the other; 5 if it is not set.
 */
class DeliveringIT {
    private static final int BAGS = Integer.parseInt(System.getenv().getOrDefault("BAGWARD_DELAYS", "5"));
    private static final Pattern LINK = Pattern.compile("http://127\\.0\\.0\\.1:(\\d+)(/answer/\\S+)");

    private final BlockingQueue<String> posts = new LinkedBlockingQueue<>();

    @Test
    void readings_become_a_mail_within_seconds_and_its_link_confirms_the_alarm(@TempDir Path folder) throws Exception {
        GreenMail mail = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
        mail.start();
        HttpServer web = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        web.createContext("/hook", this::post);
        web.start();
        int broker = Ports.free();
        String text = text(
                broker, Ports.free(), mail.getSmtp().getPort(), web.getAddress().getPort());
        Map<String, String> secrets = Map.of("HOOK_SECRET", "MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw");
        Configuration configuration =
                new ConfigurationReader(folder, secrets).read("test.yaml", text, new Inspection());
        try (Running running = new Running(configuration, StationClock.trusted(Clock.systemUTC()))) {
            running.open();
            Awaitility.await().atMost(Duration.ofSeconds(30)).until(() -> collecting(running));
            say(delays(running, broker));
            assertTrue(mail.waitForIncomingEmail(60_000, 1), "no mail");
            confirm(running, text(mail, 0));
        } finally {
            mail.stop();
            web.stop(0);
        }
    }

    private List<Long> delays(Running running, int broker) throws Exception {
        List<Long> delays = new ArrayList<>();
        for (int bag = 1; bag <= BAGS; bag++) {
            delays.add(delay(running, broker, bag));
        }
        Collections.sort(delays);
        return delays;
    }

    private static void say(List<Long> delays) {
        long median = delays.get(delays.size() / 2);
        long late = delays.get((int) Math.ceil(0.99 * delays.size()) - 1);
        System.out.printf(
                "delay from reading published to message handed over: median %d ms, 99th percentile %d ms, %d alarms%n",
                median, late, delays.size());
        assertTrue(median < 10_000, delays::toString);
    }

    private void post(HttpExchange exchange) throws IOException {
        posts.add(new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8));
        exchange.sendResponseHeaders(204, -1);
        exchange.close();
    }

    private static String text(int broker, int pages, int mail, int web) {
        StringBuilder sensors = new StringBuilder();
        for (int bag = 1; bag <= BAGS; bag++) {
            sensors.append("""
                    - id: spare-%1$d
                      house: north
                      spare: true
                      every: 1 min
                      topic: t/spare-%1$d
                      payload: json
                      time: /at
                      reads: [{quantity: temperature, at: /t, unit: Cel}, {quantity: humidity, at: /h, unit: "%%RH"}]
                    """.formatted(bag));
        }
        return """
                station: {name: Test bench, latitude: 53.2, longitude: -7.1, time-zone: UTC}
                houses: [{id: north, name: North, bays: [{id: a, name: Bench, spots: %d, across: 2}]}]
                broker: {port: %d}
                rules:
                - id: damp-now
                  name: Damp now
                  watches: bag-damp
                  limit: 90
                  deadband: 2
                  priority: high
                  card: {what: Look, why: Test, how-soon: Now, proof: Dry}
                page: {port: %d}
                people: [{name: Ruth, channels: [mail], lists: false, tell-from: high}]
                deliveries:
                  public-address: http://127.0.0.1:%d
                  mail: {host: 127.0.0.1, port: %d, security: none, from: bagward@example.org}
                  channels:
                  - {name: mail, kind: mail, to: ruth@example.org}
                  - {name: hook, kind: webhook, url: "http://127.0.0.1:%d/hook", secret-from: HOOK_SECRET, follow: true}
                sensors:
                """.formatted(BAGS + 1, broker, pages, pages, mail, web) + sensors;
    }

    private long delay(Running running, int broker, int bag) throws Exception {
        Instant now = Instant.now().truncatedTo(ChronoUnit.SECONDS);
        running.watch().change(bag(bag, now.minus(Duration.ofHours(2))), "tester");
        publish(broker, bag, now.minus(Duration.ofMinutes(2)), 60);
        publish(broker, bag, now.minus(Duration.ofMinutes(1)), 97);
        long begun = System.nanoTime();
        publish(broker, bag, now, 97);
        String wanted = "\"rule\":\"damp-now\",\"subject\":\"bag:T-" + bag + "\"";
        for (String post = ""; !post.contains(wanted); ) {
            post = Objects.requireNonNull(posts.poll(60, TimeUnit.SECONDS), "nothing was handed over");
        }
        return Duration.ofNanos(System.nanoTime() - begun).toMillis();
    }

    private static void confirm(Running running, String mail) throws Exception {
        Matcher link = LINK.matcher(mail);
        assertTrue(link.find(), mail);
        String origin = "http://127.0.0.1:" + link.group(1);
        long open = open(running);
        HttpClient client = HttpClient.newHttpClient();
        URI address = URI.create(origin + link.group(2));
        client.send(HttpRequest.newBuilder(address).build(), BodyHandlers.discarding());
        assertEquals(open, open(running), "opening the page changes nothing");
        HttpRequest press = HttpRequest.newBuilder(address)
                .header("Origin", origin)
                .POST(HttpRequest.BodyPublishers.noBody())
                .build();
        assertEquals(303, client.send(press, BodyHandlers.discarding()).statusCode());
        assertTrue(open(running) < open, "its alarms are confirmed");
    }

    private static long open(Running running) {
        return running.watch().board().alarms().stream()
                .filter(view -> view.alarm().acknowledgedAt().isEmpty())
                .filter(view -> view.rule().id().value().equals("damp-now"))
                .count();
    }

    private static String text(GreenMail server, int number) throws Exception {
        return ((String) server.getReceivedMessages()[number].getContent()).replace("\r\n", "\n");
    }

    private static boolean collecting(Running running) {
        return running.watch().health().parts().stream()
                .anyMatch(part -> part.name().equals("collector") && part.well());
    }

    private static List<RegisterChange> bag(int number, Instant at) {
        TagCode tag = new TagCode("T-" + number);
        Line line = new Line("Test line");
        Pollination pollination = new Pollination(at, "tester", PollinationKind.SELF, 8, Optional.empty());
        Spot spot = new Spot(new HouseId("north"), new BayId("a"), number);
        return List.of(
                new RegisterChange.PutOn(tag, at, spot, new MaterialId("paper"), line, line, pollination),
                new RegisterChange.Lend(tag, at, new SensorId("spare-" + number)));
    }

    private static void publish(int broker, int bag, Instant at, double humidity) throws MqttException {
        byte[] payload = ("{\"at\":\"" + at + "\",\"t\":18,\"h\":" + humidity + "}").getBytes(StandardCharsets.UTF_8);
        try (MqttClient client =
                new MqttClient("tcp://127.0.0.1:" + broker, MqttClient.generateClientId(), new MemoryPersistence())) {
            client.connect();
            client.publish("t/spare-" + bag, payload, 1, false);
            client.disconnect();
        }
    }
}
