package bagward.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.Acting;
import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmPhase;
import bagward.alarm.OtherLimit;
import bagward.alarm.Rule;
import bagward.alarm.Subject;
import bagward.bag.CropId;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Six hot days of a house with two tender heads and three others, of which bags come on, off and are swapped. */
class TogetherRehearsalTest {
    private static final Duration TICK = Duration.ofMinutes(30);
    private static final double END = 24 * 6;
    private static final Optional<CropId> TENDER = Optional.of(Scenario.TENDER.id());
    private static final Optional<CropId> PLAIN = Optional.of(new CropId("oleracea"));
    private static final Rule HOT = Acting.withLimits(
                    Scenario.HOT, new OtherLimit(Optional.empty(), Optional.empty(), TENDER, 24))
            .together(3);

    private final Scenario scenario =
            new Scenario(20).watch(HOT, Scenario.DAMP.together(2), Scenario.DUE, Scenario.SILENT);

    TogetherRehearsalTest() {
        for (int day = 0; day < 6; day++) {
            double midnight = 24.0 * day;
            double fault = day == 4 ? 1.5 : 0;
            scenario.heard(Scenario.SOUTH_POST, midnight, midnight + 8, 12, 92)
                    .heard(Scenario.SOUTH_POST, midnight + 8, midnight + 10, 26, 50)
                    .heard(Scenario.SOUTH_POST, midnight + 10, midnight + 11, day == 2 ? 26 : 32, 45)
                    .heard(Scenario.SOUTH_POST, midnight + 11 + fault, midnight + 13, day == 2 ? 26 : 32, 45)
                    .heard(Scenario.SOUTH_POST, midnight + 13, midnight + 15, 26, 50)
                    .heard(Scenario.SOUTH_POST, midnight + 15, midnight + 24, 20, 60);
        }
        scenario.heard(Scenario.NORTH_POST, 0, END, 14, 88)
                .bag("T-1", Scenario.SOUTH, Scenario.WINDOW, 1, 3, TENDER)
                .bag("T-2", Scenario.SOUTH, Scenario.WINDOW, 2, 3.5, TENDER)
                .bag("S-1", Scenario.SOUTH, Scenario.AISLE, 1, 3.25, PLAIN)
                .bag("S-2", Scenario.SOUTH, Scenario.AISLE, 2, 33, PLAIN)
                .bag("S-3", Scenario.SOUTH, Scenario.AISLE, 3, 34.75, PLAIN)
                .bag("N-1", Scenario.NORTH, Scenario.AISLE, 1, 10)
                .change(new RegisterChange.TakeOff(new TagCode("S-1"), Scenario.hours(83.9)))
                .change(new RegisterChange.TakeOff(new TagCode("S-2"), Scenario.hours(83.95)))
                .change(new RegisterChange.Swap(new TagCode("T-1"), Scenario.hours(85.25), Scenario.FILM))
                .change(new RegisterChange.TakeOff(new TagCode("S-3"), Scenario.hours(109.4)));
    }

    @Test
    void it_gives_the_alarms_of_houses_that_the_running_engine_gives() {
        List<AlarmEvent> expected = SideBySide.live(scenario, END, TICK);
        assertTrue(raisedByHouse(expected) >= 8, () -> String.join("\n", SideBySide.words(expected)));
        assertEquals(SideBySide.words(expected), SideBySide.words(SideBySide.rehearsed(scenario.at(END), TICK)));
    }

    @Test
    void the_order_of_arrival_does_not_matter() {
        List<AlarmEvent> inOrder = SideBySide.rehearsed(scenario.at(END), TICK);
        Collections.shuffle(scenario.readings(), new Random(5));
        assertEquals(SideBySide.words(inOrder), SideBySide.words(SideBySide.rehearsed(scenario.at(END), TICK)));
    }

    private static long raisedByHouse(List<AlarmEvent> events) {
        return events.stream()
                .filter(event -> event.to() == AlarmPhase.UNACKNOWLEDGED)
                .filter(event -> event.key().subject() instanceof Subject.InHouse)
                .count();
    }
}
