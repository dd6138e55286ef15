package bagward.board;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DueTimeTest {
    @ParameterizedTest
    @CsvSource({
        // put on,               due: the morning of the seventh day, house time
        "2026-02-03T07:30:00Z, 2026-02-10T05:00:00Z",
        "2026-02-03T22:30:00Z, 2026-02-10T05:00:00Z",
        // after midnight in the house
        "2026-02-03T23:30:00Z, 2026-02-11T05:00:00Z",
        // over the night on which the clocks go forward
        "2026-03-26T10:00:00Z, 2026-04-02T04:00:00Z"
    })
    void a_bag_is_due_on_the_morning_of_its_day_whatever_the_hour_it_was_put_on(Instant putOn, Instant due) {
        ZoneId zone = ZoneId.of("Europe/Copenhagen");
        assertEquals(
                due, DueTime.of(putOn, Optional.ofNullable(Scenario.materials().get(Scenario.FILM)), zone));
        assertEquals(due, DueTime.of(putOn, Optional.empty(), zone));
    }
}
