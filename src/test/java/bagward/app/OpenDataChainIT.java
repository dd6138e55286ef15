package bagward.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.Subject;
import bagward.bag.Line;
import bagward.bag.MaterialId;
import bagward.bag.Origin;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.board.BagView;
import bagward.board.Board;
import bagward.climate.SensorId;
import bagward.collector.Ports;
import bagward.collector.Replay;
import bagward.collector.ReplayPlan;
import bagward.collector.StationClock;
import bagward.document.Inspection;
import bagward.document.Section;
import bagward.station.BayId;
import bagward.station.HouseId;
import bagward.station.Spot;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings of a real greenhouse, played through MQTT with their recorded times while bags are on. */
class OpenDataChainIT {
    private static final Path RECORDED = Path.of("src/test/resources/open-data/greenhouse-2022-winter-excerpt.csv");
    private static final Instant BEGIN = Instant.parse("2022-02-24T08:00:00Z");
    private static final Instant END = Instant.parse("2022-02-28T22:55:00Z");
    private static final TagCode ESTIMATED = new TagCode("E-1");
    private static final TagCode MEASURED = new TagCode("M-1");
    private static final String PLAN = """
            time: time
            tracks:
            - topic: glass/house
              columns: {air_temperature_c: t, relative_humidity_pct: h, par_umol_m2_s: p}
            - topic: glass/crop
              columns: {second_air_temperature_c: t, second_relative_humidity_pct: h}
            """;
    private static final String CONFIGURATION = """
            station: {name: Recorded house, latitude: 52.03, longitude: 4.53, time-zone: Europe/Amsterdam}
            houses: [{id: glass, name: Glass, bays: [{id: a, name: Bench, spots: 4, across: 2}]}]
            broker: {port: %d}
            sensors:
            - id: house
              house: glass
              every: 5 min
              topic: glass/house
              payload: json
              time: /time
              reads:
              - {quantity: temperature, at: /t, unit: Cel}
              - {quantity: humidity, at: /h, unit: "%%RH"}
              - {quantity: light, at: /p, unit: umol/m2/s}
            - id: crop
              house: glass
              spare: true
              every: 5 min
              topic: glass/crop
              payload: json
              time: /time
              reads: [{quantity: temperature, at: /t, unit: Cel}, {quantity: humidity, at: /h, unit: "%%RH"}]
            rules:
            - id: damp-tonight
              name: Damp tonight
              watches: bag-damp
              limit: 85
              deadband: 2
              on-delay: 1 h
              priority: medium
              card: {what: Look, why: Test, how-soon: Tonight, proof: Dry}
            page: {port: 0}
            """;

    @Test
    void a_recorded_season_played_twice_gives_one_history_and_its_alarms(@TempDir Path folder) throws Exception {
        Configuration configuration = new ConfigurationReader(folder, Map.of())
                .read("test.yaml", CONFIGURATION.formatted(Ports.free()), new Inspection());
        try (Running running = new Running(configuration, StationClock.trusted(Clock.fixed(END, ZoneOffset.UTC)))) {
            running.open();
            Awaitility.await().atMost(Duration.ofSeconds(20)).until(() -> collecting(running));
            running.watch().change(bags(), "tester");
            long messages = play(running);
            Board once = boardAfter(running, messages);
            assertEquals(messages, play(running));
            Board twice = boardAfter(running, 2 * messages);
            assertEquals(once.bags(), twice.bags(), "nothing is doubled");
            assertEquals(0, running.watch().health().quarantined());
            everyBagIsJudged(twice);
            assertTrue(page(running, "alarms").contains(ESTIMATED.value()), "the damp bag is on the page of alarms");
        }
    }

    private static void everyBagIsJudged(Board board) {
        BagView estimated = board.find(ESTIMATED).orElseThrow();
        BagView measured = board.find(MEASURED).orElseThrow();
        assertEquals(Origin.ESTIMATED, estimated.humidity().orElseThrow().origin());
        assertEquals(Origin.MEASURED, measured.humidity().orElseThrow().origin());
        double house = board.houses().get(0).humidity().orElseThrow().value();
        assertTrue(estimated.humidity().orElseThrow().value() > house, "a bag at night is damper than its house");
        assertTrue(
                board.alarms().stream()
                        .anyMatch(view -> view.alarm().key().subject().equals(new Subject.Bag(ESTIMATED))),
                () -> "alarms: " + board.alarms());
    }

    private static boolean collecting(Running running) {
        return running.watch().health().parts().stream()
                .anyMatch(part -> part.name().equals("collector") && part.well());
    }

    private static long play(Running running) throws InterruptedException {
        Inspection inspection = new Inspection();
        ReplayPlan plan =
                ReplayPlan.read(Section.parse("plan.yaml", PLAN, inspection)).orElseThrow();
        return new Replay(running.brokerLink(), OptionalDouble.empty(), progress -> {}).play(RECORDED, plan);
    }

    /** A board made when all messages were dealt with. */
    private static Board boardAfter(Running running, long messages) {
        Awaitility.await().atMost(Duration.ofSeconds(60)).until(() -> running.messages() == messages);
        Awaitility.await()
                .atMost(Duration.ofSeconds(20))
                .until(() -> running.watch().board().newestReading().equals(Optional.of(END)));
        running.watch().change(List.of(), "tester");
        return running.watch().board();
    }

    private static List<RegisterChange> bags() {
        return List.of(
                putOn(ESTIMATED, 1),
                putOn(MEASURED, 2),
                new RegisterChange.Lend(MEASURED, BEGIN, new SensorId("crop")));
    }

    private static RegisterChange putOn(TagCode tag, int spot) {
        Line line = new Line("Test line");
        Pollination pollination = new Pollination(BEGIN, "tester", PollinationKind.SELF, 8, Optional.empty());
        return new RegisterChange.PutOn(
                tag,
                BEGIN,
                new Spot(new HouseId("glass"), new BayId("a"), spot),
                new MaterialId("paper"),
                line,
                line,
                pollination);
    }

    private static String page(Running running, String path) throws Exception {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(running.address() + path)).build();
        return HttpClient.newHttpClient()
                .send(request, HttpResponse.BodyHandlers.ofString())
                .body();
    }
}
