package bagward.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.Line;
import bagward.bag.PollenScore;
import bagward.pollen.PollenEntry;
import bagward.station.HouseId;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pollen scores on disk. */
class SqlitePollenTest {
    private static final Instant TIME = Instant.parse("2026-05-04T07:02:01.123456789Z");
    private static final HouseId NORTH = new HouseId("north");
    private static final Optional<Line> LINE = Optional.of(new Line("Östra 4 × \"wild\""));

    private final Path file;

    SqlitePollenTest(@TempDir Path folder) {
        file = folder.resolve("bagward.db");
    }

    private static List<PollenEntry> oneOfEach() {
        List<PollenEntry> entries = new ArrayList<>();
        for (PollenScore score : PollenScore.values()) {
            entries.add(new PollenEntry.Scored(NORTH, LINE, TIME.plusSeconds(score.number()), "Ida", score));
        }
        entries.add(new PollenEntry.Scored(NORTH, Optional.empty(), TIME, "Åse", PollenScore.CLEAR));
        entries.add(new PollenEntry.Withdrawn(NORTH, Optional.empty(), TIME, "Bo"));
        entries.add(new PollenEntry.Withdrawn(NORTH, LINE, TIME, "Bo"));
        return entries;
    }

    @Test
    void every_entry_survives_closing_and_opening_in_the_order_of_entry() {
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            stores.pollen().append(oneOfEach(), TIME.plusSeconds(60));
        }
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            assertEquals(oneOfEach(), stores.pollen().entries());
        }
    }

    @Test
    void who_entered_what_and_when_can_be_read_with_any_database_tool() throws SQLException {
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            stores.pollen().append(oneOfEach().subList(4, 5), TIME.plusSeconds(60));
        }
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement();
                var row =
                        statement.executeQuery("SELECT house, scored_at, recorded_at, entered_by FROM pollen_entry")) {
            assertTrue(row.next());
            assertEquals("north", row.getString(1));
            assertEquals(TIME.toEpochMilli(), row.getLong(2));
            assertEquals(TIME.plusSeconds(60).toEpochMilli(), row.getLong(3));
            assertEquals("Åse", row.getString(4));
        }
    }

    @Test
    void an_entry_of_a_later_program_is_refused_by_name() throws SQLException {
        try (SqliteStores stores = SqliteStores.open(file, Samples.CLOCK)) {
            stores.pollen().append(oneOfEach(), TIME);
            try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                    Statement statement = connection.createStatement()) {
                statement.execute("UPDATE pollen_entry SET document = replace(document, 'pollen-withdrawn', 'tasted')");
            }
            StoreException refused =
                    assertThrows(StoreException.class, () -> stores.pollen().entries());
            assertTrue(String.valueOf(refused.getMessage()).contains("'tasted'"));
        }
    }
}
