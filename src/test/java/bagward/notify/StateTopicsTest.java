package bagward.notify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.board.Board;
import bagward.message.Stage;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class StateTopicsTest {
    private static final Instant NOON = Instant.parse("2027-05-11T10:00:00Z");

    @Test
    void a_house_that_calls_for_its_bags_has_a_topic_with_their_tags_and_counts_in_its_house() {
        Board board = Stage.board(NOON, List.of(Stage.ofHouse(Stage.HIGH, "alder", 3, NOON)));
        Map<String, String> topics = StateTopics.of(board);
        String alarm = topics.getOrDefault("alarm/" + Stage.HIGH.id() + "/house/alder", "");
        assertTrue(alarm.contains("\"bags\":[\"H-0\",\"H-1\",\"H-2\"]"), topics::toString);
        assertEquals("{\"bag-alarms\":1,\"unacknowledged\":1,\"highest\":\"high\"}", topics.get("house/alder"));
        assertEquals("{\"bag-alarms\":0,\"unacknowledged\":0,\"highest\":\"none\"}", topics.get("house/birch"));
    }
}
