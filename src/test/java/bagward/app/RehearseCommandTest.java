package bagward.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.Line;
import bagward.bag.MaterialId;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.climate.Reading;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.station.BayId;
import bagward.station.HouseId;
import bagward.station.Spot;
import bagward.store.SqliteStores;
import bagward.units.Quantity;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example station with a fortnight of damp air and one bag that was left on. */
class RehearseCommandTest {
    private static final Instant START = Instant.parse("2026-05-01T06:00:00Z");
    private static final Duration FORTNIGHT = Duration.ofDays(14);

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final Path folder;
    private final Path file;

    RehearseCommandTest(@TempDir Path folder) throws IOException {
        this.folder = folder;
        this.file = Files.writeString(folder.resolve("house.yaml"), Packaged.text("config/bagward.yaml"));
    }

    @Test
    void the_past_of_a_running_station_is_tried_beside_other_rules_and_nothing_is_changed() throws IOException {
        String late = Packaged.text("config/bagward.yaml")
                .replace("\nrules:\n", "\nrules:\n  - id: bag-overdue\n    limit: 30\n");
        Path other = Files.writeString(folder.resolve("other.yaml"), late);
        try (SqliteStores running = season()) {
            long before =
                    running.readings().newest(humidity(), Instant.MAX).stream().count();
            assertEquals(
                    0, run("rehearse", file.toString(), "--against", other.toString(), "--every", "30"), err::toString);
            assertTrue(row("bag-overdue").endsWith("1           0"), out::toString);
            assertTrue(row("bag-damp-very-long").matches(".* ([1-9]\\d*) +\\1"), out::toString);
            assertTrue(row("medium and high").matches(".*\\d\\.\\d +\\d+\\.\\d"), out::toString);
            assertTrue(out.toString().contains("a look every 30 min, 14 bag-days"), out::toString);
            assertTrue(running.alarms().newestEvents(10).isEmpty());
            assertEquals(
                    before,
                    running.readings().newest(humidity(), Instant.MAX).stream().count());
        }
    }

    @Test
    void a_station_that_never_ran_is_named() {
        assertEquals(4, run("rehearse", file.toString()));
        assertTrue(err.toString().contains("is not there: name the folder of a station that ran"), err::toString);
    }

    @Test
    void an_end_before_the_start_is_refused() {
        season().close();
        assertEquals(3, run("rehearse", file.toString(), "--from", "2026-05-10", "--to", "2026-05-02"));
        assertTrue(err.toString().contains("give an earlier day"), err::toString);
    }

    private String row(String name) {
        return out.toString()
                .lines()
                .filter(line -> line.startsWith(name))
                .findFirst()
                .orElse("")
                .strip();
    }

    private int run(String... arguments) {
        return Bagward.commandLine()
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(arguments);
    }

    private SqliteStores season() {
        SqliteStores stores =
                SqliteStores.open(folder.resolve("bagward-data").resolve("bagward.db"), Clock.systemUTC());
        List<Reading> readings = new ArrayList<>();
        for (Instant at = START; at.isBefore(START.plus(FORTNIGHT)); at = at.plusSeconds(120)) {
            readings.add(Reading.of(new SeriesId(new SensorId("north-air"), Quantity.TEMPERATURE), at, 13));
            readings.add(Reading.of(humidity(), at, 97));
        }
        stores.readings().append(readings);
        RegisterChange putOn = new RegisterChange.PutOn(
                new TagCode("A-1"),
                START,
                new Spot(new HouseId("north"), new BayId("a"), 3),
                new MaterialId("film-house"),
                new Line("Rook 4"),
                new Line("Rook 4"),
                new Pollination(START, "Ada", PollinationKind.SELF, 8, Optional.empty()));
        stores.register().append(List.of(putOn), "Ada", START);
        return stores;
    }

    private static SeriesId humidity() {
        return new SeriesId(new SensorId("north-air"), Quantity.HUMIDITY);
    }
}
