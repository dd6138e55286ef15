package bagward.app;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.Line;
import bagward.bag.MaterialId;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.collector.Mosquitto;
import bagward.collector.Ports;
import bagward.collector.StationClock;
import bagward.document.Inspection;
import bagward.site.WallVisitor;
import bagward.station.BayId;
import bagward.station.HouseId;
import bagward.station.Spot;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.awaitility.Awaitility;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole chain on real parts: a message in a broker becomes an alarm on a wall in a real browser. */
class ChainIT {
    private static final TagCode TAG = new TagCode("T-1");
    private static final String CONFIGURATION = """
            station: {name: Test bench, latitude: 53.2, longitude: -7.1, time-zone: UTC}
            houses: [{id: north, name: North, bays: [{id: a, name: Bench, spots: 4, across: 2}]}]
            broker: {%s}
            sensors:
            - id: spare
              house: north
              spare: true
              every: 1 min
              topic: t/spare
              payload: json
              time: /at
              reads: [{quantity: temperature, at: /t, unit: Cel}, {quantity: humidity, at: /h, unit: "%%RH"}]
            rules:
            - id: damp-now
              name: Damp now
              watches: bag-damp
              limit: 90
              deadband: 2
              priority: high
              card: {what: Look, why: Test, how-soon: Now, proof: Dry}
            page: {port: 0}
            """;

    @Test
    void a_message_in_the_embedded_broker_is_an_alarm_on_the_wall_within_two_seconds(@TempDir Path folder)
            throws Exception {
        int port = Ports.free();
        messageBecomesAlarm(folder, "port: " + port, "tcp://127.0.0.1:" + port);
    }

    @Test
    void a_message_in_mosquitto_is_an_alarm_on_the_wall_within_two_seconds(@TempDir Path folder) throws Exception {
        try (Mosquitto mosquitto = Mosquitto.start(folder)) {
            String url = mosquitto.link().url();
            messageBecomesAlarm(folder, "url: \"" + url.replace("tcp://", "mqtt://") + "\"", url);
        }
    }

    private void messageBecomesAlarm(Path folder, String broker, String url) throws Exception {
        Configuration configuration = new ConfigurationReader(folder, Map.of())
                .read("test.yaml", CONFIGURATION.formatted(broker), new Inspection());
        Instant now = Instant.now().truncatedTo(ChronoUnit.SECONDS);
        try (Running running = new Running(configuration, StationClock.trusted(Clock.systemUTC()))) {
            running.open();
            // What is published before the first subscription stands goes to nobody.
            Awaitility.await().atMost(Duration.ofSeconds(20)).until(() -> collecting(running));
            running.watch().change(bag(now.minus(Duration.ofHours(2))), "tester");
            publish(url, now.minus(Duration.ofMinutes(2)), 60);
            Awaitility.await()
                    .atMost(Duration.ofSeconds(20))
                    .until(() -> running.watch()
                            .board()
                            .find(TAG)
                            .orElseThrow()
                            .humidity()
                            .isPresent());
            assertFalse(dampListed(running), "a dry bag raises nothing");
            try (WallVisitor wall = WallVisitor.open(running.address() + "wall")) {
                publish(url, now.minus(Duration.ofMinutes(1)), 97);
                publish(url, now, 97);
                long begun = System.nanoTime();
                wall.awaitAct(Duration.ofSeconds(5));
                Duration took = Duration.ofNanos(System.nanoTime() - begun);
                assertTrue(took.compareTo(Duration.ofSeconds(2)) <= 0, () -> "the alarm took " + took);
            }
            assertTrue(dampListed(running));
        }
    }

    private static boolean collecting(Running running) {
        return running.watch().health().parts().stream()
                .anyMatch(part -> part.name().equals("collector") && part.well());
    }

    private static boolean dampListed(Running running) {
        return running.watch().board().alarms().stream()
                .anyMatch(view -> view.rule().id().value().equals("damp-now"));
    }

    private static List<RegisterChange> bag(Instant at) {
        Line line = new Line("Test line");
        Pollination pollination = new Pollination(at, "tester", PollinationKind.SELF, 8, Optional.empty());
        Spot spot = new Spot(new HouseId("north"), new BayId("a"), 1);
        return List.of(
                new RegisterChange.PutOn(TAG, at, spot, new MaterialId("paper"), line, line, pollination),
                new RegisterChange.Lend(TAG, at, new bagward.climate.SensorId("spare")));
    }

    private static void publish(String url, Instant at, double humidity) throws MqttException {
        byte[] payload = ("{\"at\":\"" + at + "\",\"t\":18,\"h\":" + humidity + "}").getBytes(StandardCharsets.UTF_8);
        try (MqttClient client = new MqttClient(url, MqttClient.generateClientId(), new MemoryPersistence())) {
            client.connect();
            client.publish("t/spare", payload, 1, false);
            client.disconnect();
        }
    }
}
