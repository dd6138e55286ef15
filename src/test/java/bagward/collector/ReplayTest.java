package bagward.collector;

import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.climate.Reading;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.collector.payload.SensorSource;
import bagward.document.Inspection;
import bagward.document.Section;
import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import bagward.units.Quantity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ReplayTest {
    private static final String PLAN = """
            time: time
            tracks:
            - topic: house/air
              columns: {air_c: t, rh: h}
            - topic: house/light
              columns: {par: l}
            """;

    private static final String GOOD = """
            time,air_c,rh,par,other
            2022-02-01T00:00:00+01:00,12.90,78.40,0.00,x
            2022-02-01T00:05:00+01:00,,,-0.04,x
            2022-02-01T00:10:00+01:00,13.10,,,x
            2022-02-01T00:15:00+01:00,,,,x
            """;

    private final Path folder;

    ReplayTest(@TempDir Path folder) {
        this.folder = folder;
    }

    private static ReplayPlan plan() {
        Inspection inspection = new Inspection();
        Optional<ReplayPlan> plan = ReplayPlan.read(Section.parse("plan.yaml", PLAN, inspection));
        inspection.throwIfRefused();
        return plan.orElseThrow();
    }

    private Path csv(String text) throws IOException {
        return Files.writeString(folder.resolve("recorded.csv"), text);
    }

    /** The usual settings of a station that takes old recordings. */
    private static final CollectorSettings LONG_AGO = new CollectorSettings(
            "bagward",
            500,
            Duration.ofMillis(50),
            Duration.ofMinutes(5),
            Duration.ofDays(36_500),
            true,
            List.of(),
            false);

    private static List<SensorSource> sources() {
        Inspection inspection = new Inspection();
        Section top = Section.parse("sensors.yaml", """
                sensors:
                - id: air
                  topic: house/air
                  payload: json
                  time: /time
                  reads: [{quantity: temperature, at: /t, unit: Cel}, {quantity: humidity, at: /h, unit: "%RH"}]
                - id: light
                  topic: house/light
                  payload: json
                  time: /time
                  reads: [{quantity: light, at: /l, unit: umol/m2/s}]
                """, inspection);
        List<Section> entries = top.sections("sensors", 1);
        List<SensorSource> sources = CollectorReader.sources(entries);
        inspection.throwIfRefused();
        return sources;
    }

    @ParameterizedTest
    @EnumSource(TestBroker.Kind.class)
    void a_recorded_file_is_stored_at_its_recorded_times_with_its_gaps(TestBroker.Kind kind) throws Exception {
        MemoryStore store = new MemoryStore();
        List<Replay.Progress> progress = new ArrayList<>();
        try (TestBroker broker = kind.start(folder.resolve("broker"));
                MqttCollector collector = new MqttCollector(
                        StationClock.trusted(Clock.systemUTC()),
                        broker.settings(),
                        LONG_AGO,
                        sources(),
                        store,
                        store,
                        store,
                        readings -> {})) {
            collector.start();
            await().atMost(Duration.ofSeconds(20)).until(() -> collector.state().connected());
            Replay replay = new Replay(broker.settings().link(), OptionalDouble.empty(), progress::add);
            assertEquals(4, replay.play(csv(GOOD), plan()));
            await().atMost(Duration.ofSeconds(20)).until(() -> store.count() == 5);
        }
        Instant start = Instant.parse("2022-01-31T23:00:00Z");
        SeriesId temperature = new SeriesId(new SensorId("air"), Quantity.TEMPERATURE);
        SeriesId light = new SeriesId(new SensorId("light"), Quantity.LIGHT);
        assertEquals(
                List.of(Reading.of(temperature, start, 12.9), Reading.of(temperature, start.plusSeconds(600), 13.1)),
                store.readings(temperature, start, start.plusSeconds(3600)));
        assertEquals(
                List.of(Reading.of(light, start, 0), Reading.of(light, start.plusSeconds(300), 0)),
                store.readings(light, start, start.plusSeconds(3600)));
        assertEquals(new Replay.Progress(4, 4, 4, start.plusSeconds(900)), progress.get(3));
        assertEquals(0, store.quarantinedCount());
    }

    @Test
    void every_fault_is_said_by_line_before_anything_is_sent() throws Exception {
        String bad = GOOD.replace("12.90", "12,90")
                .replace("2022-02-01T00:10:00+01:00", "2022-02-01 00:10")
                .replace("13.10", "warm");
        RefusedInputException refused = assertThrows(
                RefusedInputException.class, () -> replayToNowhere().play(csv(bad), plan()));
        List<String> sentences = refused.faults().stream().map(Fault::sentence).toList();
        assertEquals(3, sentences.size(), sentences::toString);
        assertTrue(sentences.get(0).startsWith("recorded.csv line 2, row: found '6 values'"), sentences::toString);
        assertTrue(
                sentences.get(1).startsWith("recorded.csv line 4, time: found '2022-02-01 00:10'"),
                sentences::toString);
        assertTrue(sentences.get(2).startsWith("recorded.csv line 4, air_c: found 'warm'"), sentences::toString);
    }

    @Test
    void a_column_that_is_not_there_is_said_with_those_that_are() throws Exception {
        RefusedInputException refused = assertThrows(
                RefusedInputException.class, () -> replayToNowhere().play(csv(GOOD.replace("par", "ppfd")), plan()));
        assertEquals(
                List.of("recorded.csv line 1, no column 'par': the columns are time, air_c, rh, ppfd, other."),
                refused.faults().stream().map(Fault::sentence).toList());
    }

    @Test
    void a_broker_that_is_not_there_is_said() throws Exception {
        assertTrue(String.valueOf(assertThrows(
                                BrokerException.class, () -> replayToNowhere().play(csv(GOOD), plan()))
                        .getMessage())
                .contains("check that it runs"));
    }

    private static Replay replayToNowhere() throws IOException {
        BrokerLink nowhere = new BrokerLink("tcp://127.0.0.1:" + Ports.free(), Optional.empty(), Optional.empty());
        return new Replay(nowhere, OptionalDouble.empty(), p -> {});
    }
}
