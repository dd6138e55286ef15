package bagward.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What could not be used, on disk. */
class SqliteQuarantineTest {
    private final Connector connector;
    private final SqliteStores stores;
    private final QuarantineStore quarantine;

    SqliteQuarantineTest(@TempDir Path folder) {
        connector = Connector.to(folder.resolve("bagward.db"));
        stores = SqliteStores.open(connector, Samples.CLOCK);
        quarantine = stores.quarantine();
    }

    @AfterEach
    void close() {
        stores.close();
    }

    private static Quarantined message(long minute, String topic, String payload, String reason) {
        return new Quarantined(Samples.at(minute), topic, Payload.of(payload.getBytes(StandardCharsets.UTF_8)), reason);
    }

    @Test
    void messages_come_back_newest_first() {
        Quarantined older = message(1, "a", "x", "not a number");
        Quarantined newer = message(2, "a", "y", "not a number");
        quarantine.quarantine(List.of(newer, older));
        assertEquals(List.of(newer, older), quarantine.newestQuarantined(10));
        assertEquals(List.of(newer), quarantine.newestQuarantined(1));
    }

    @Test
    void bytes_that_are_no_text_are_kept_as_they_came() {
        Quarantined noise = new Quarantined(Samples.at(1), "a", Payload.of(new byte[] {0, -1, 127}), "not text");
        quarantine.quarantine(List.of(noise));
        assertEquals(List.of(noise), quarantine.newestQuarantined(1));
    }

    @Test
    void equal_messages_are_one_entry_that_counts_them_and_shows_the_newest_time() {
        quarantine.quarantine(List.of(message(3, "a", "x", "r"), message(1, "a", "x", "r")));
        quarantine.quarantine(List.of(message(2, "a", "x", "r")));
        assertEquals(List.of(message(3, "a", "x", "r")), quarantine.newestQuarantined(10));
        assertEquals(3, quarantine.quarantinedCount());
    }

    @Test
    void messages_that_only_run_together_to_the_same_text_are_two() {
        quarantine.quarantine(List.of(message(1, "ab", "c", "r"), message(1, "a", "bc", "r")));
        assertEquals(2, quarantine.newestQuarantined(10).size());
    }

    @Test
    void heard_topics_are_counted_and_keep_their_newest_sample_whatever_the_order() {
        quarantine.heard(
                List.of(new HeardTopic("z", 2, Samples.at(5), "newer"), new HeardTopic("b", 1, Samples.at(1), "b")));
        quarantine.heard(List.of(new HeardTopic("z", 3, Samples.at(2), "older")));
        assertEquals(
                List.of(new HeardTopic("b", 1, Samples.at(1), "b"), new HeardTopic("z", 5, Samples.at(5), "newer")),
                quarantine.heardSince(Instant.EPOCH));
        assertEquals(List.of(new HeardTopic("z", 5, Samples.at(5), "newer")), quarantine.heardSince(Samples.at(5)));
        assertEquals(List.of(), quarantine.heardSince(Samples.at(5).plusNanos(1)));
    }

    @Test
    void a_full_table_loses_its_oldest_rows_and_no_others() throws Exception {
        quarantine.quarantine(List.of(message(1, "a", "1", "r"), message(3, "a", "3", "r"), message(2, "a", "2", "r")));
        try (Session session = connector.writer()) {
            Bound.keepNewest(session, "quarantine", "id", 2);
        }
        assertEquals(List.of(message(3, "a", "3", "r"), message(2, "a", "2", "r")), quarantine.newestQuarantined(10));
        assertNotEquals(3, quarantine.quarantinedCount());
    }
}
