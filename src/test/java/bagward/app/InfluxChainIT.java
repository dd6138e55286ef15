package bagward.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.collector.Ports;
import bagward.collector.StationClock;
import bagward.document.Inspection;
import bagward.store.SqliteStores;
import bagward.store.influx.InfluxServer;
import bagward.units.Quantity;
import bagward.watch.Health;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import org.awaitility.Awaitility;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole program with its readings in a real influxd, which goes away and comes back. */
class InfluxChainIT {
    private static final SeriesId HUMIDITY = new SeriesId(new SensorId("north-air"), Quantity.HUMIDITY);
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private final Instant start = Instant.now().truncatedTo(ChronoUnit.SECONDS).minus(Duration.ofHours(1));
    private final Path folder;
    private final int port;

    InfluxChainIT(@TempDir Path folder) throws IOException {
        this.folder = folder;
        this.port = Ports.free();
    }

    private Configuration configuration(InfluxServer server) {
        String text = """
                station: {name: Test bench, latitude: 53.2, longitude: -7.1, time-zone: UTC}
                houses: [{id: north, name: North, bays: [{id: a, name: Bench, spots: 4, across: 2}]}]
                broker: {port: %d}
                sensors:
                - id: north-air
                  house: north
                  topic: t/air
                  payload: json
                  time: /at
                  reads: [{quantity: humidity, at: /h, unit: "%%RH"}]
                store: {folder: data, influxdb: {url: "%s", database: "north & south"}}
                page: {port: 0}
                """.formatted(port, server.url());
        return new ConfigurationReader(folder, Map.of()).read("test.yaml", text, new Inspection());
    }

    @Test
    void readings_are_kept_in_influxdb_wait_while_it_is_away_and_are_there_at_the_next_start() throws Exception {
        try (InfluxServer server = InfluxServer.start(folder.resolve("influxdb"))) {
            try (Running running = new Running(configuration(server), StationClock.trusted(Clock.systemUTC()))) {
                running.open();
                Awaitility.await().atMost(PATIENCE).until(() -> well(running, "collector"));
                publish(0, 3);
                awaitReadings(running, 3);
                server.stop();
                publish(3, 3);
                Awaitility.await().atMost(PATIENCE).until(() -> !well(running, "store"));
                assertTrue(says(running, "store").contains("InfluxDB"), says(running, "store"));
                server.startAgain();
                awaitReadings(running, 6);
                Awaitility.await().atMost(PATIENCE).until(() -> well(running, "store"));
            }
            try (Running again = new Running(configuration(server), StationClock.trusted(Clock.systemUTC()))) {
                assertEquals(readings(0, 6), again.readings().readings(HUMIDITY, Instant.MIN, Instant.MAX));
            }
            assertNothingIsInTheFile();
        }
    }

    private void assertNothingIsInTheFile() {
        try (SqliteStores file = SqliteStores.open(folder.resolve("data/bagward.db"), Clock.systemUTC())) {
            assertEquals(List.of(), file.readings().readings(HUMIDITY, Instant.MIN, Instant.MAX));
        }
    }

    private void awaitReadings(Running running, int count) {
        Awaitility.await()
                .atMost(PATIENCE)
                .ignoreExceptions()
                .until(() -> running.readings()
                        .readings(HUMIDITY, Instant.MIN, Instant.MAX)
                        .equals(readings(0, count)));
    }

    private List<Reading> readings(int first, int count) {
        return java.util.stream.IntStream.range(first, first + count)
                .mapToObj(i -> Reading.of(HUMIDITY, start.plusSeconds(60L * i), 60 + i))
                .toList();
    }

    private static boolean well(Running running, String part) {
        return running.watch().health().parts().stream().anyMatch(p -> p.name().equals(part) && p.well());
    }

    private static String says(Running running, String part) {
        return running.watch().health().parts().stream()
                .filter(p -> p.name().equals(part))
                .map(Health.Part::says)
                .findFirst()
                .orElse("");
    }

    private void publish(int first, int count) throws MqttException {
        try (MqttClient client =
                new MqttClient("tcp://127.0.0.1:" + port, MqttClient.generateClientId(), new MemoryPersistence())) {
            client.connect();
            for (Reading reading : readings(first, count)) {
                String text = "{\"at\":\"" + reading.measuredAt() + "\",\"h\":" + reading.value() + "}";
                client.publish("t/air", text.getBytes(StandardCharsets.UTF_8), 1, false);
            }
            client.disconnect();
        }
    }
}
