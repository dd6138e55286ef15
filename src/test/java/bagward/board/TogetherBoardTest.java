package bagward.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmActs;
import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEngine;
import bagward.alarm.AlarmKey;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Priority;
import bagward.alarm.Rule;
import bagward.alarm.Subject;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A house of 20 °C that is hot from ten to three, with four bags; another house stays cool. */
class TogetherBoardTest {
    private static final Rule TOGETHER = Scenario.HOT.together(3);
    private static final AlarmKey SOUTH = new AlarmKey(TOGETHER.id(), new Subject.InHouse(Scenario.SOUTH));

    private final Scenario scenario = new Scenario(20)
            .watch(TOGETHER, Scenario.SILENT)
            .heard(Scenario.SOUTH_POST, 0, 10, 20, 50)
            .heard(Scenario.SOUTH_POST, 10, 15, 33, 50)
            .heard(Scenario.SOUTH_POST, 15, 30, 20, 50)
            .heard(Scenario.NORTH_POST, 0, 30, 18, 50)
            .bag("S-2", Scenario.SOUTH, Scenario.WINDOW, 2, 1)
            .bag("S-1", Scenario.SOUTH, Scenario.WINDOW, 1, 1)
            .bag("S-3", Scenario.SOUTH, Scenario.AISLE, 3, 1)
            .bag("N-1", Scenario.NORTH, Scenario.AISLE, 1, 1);

    @Test
    void one_alarm_names_its_bags_in_walking_order_and_marks_each_of_them() {
        Board board = Scenario.tick(scenario.at(12), AlarmBook.EMPTY);
        assertEquals(1, board.alarms().size());
        AlarmView view = board.alarms().get(0);
        assertEquals(SOUTH, view.alarm().key());
        assertEquals(List.of(tag("S-1"), tag("S-2"), tag("S-3")), view.bags());
        assertTrue(
                view.alarm().message().startsWith("3 of 3 bags hot"),
                view.alarm().message());
        assertEquals(
                Optional.of(Priority.MEDIUM),
                board.find(tag("S-2")).orElseThrow().worst());
        assertEquals(Optional.empty(), board.find(tag("N-1")).orElseThrow().worst());
        assertEquals("3 bags", PlaceNames.subject(board, view));
        assertEquals("South", PlaceNames.ofAlarm(board, view));
    }

    @Test
    void alarms_of_single_bags_from_before_a_house_could_call_go_quietly() {
        scenario.watch(Scenario.HOT, Scenario.SILENT);
        AlarmBook before = Scenario.step(scenario.at(12), AlarmBook.EMPTY);
        assertEquals(3, before.alarms().size());
        scenario.watch(TOGETHER, Scenario.SILENT);
        AlarmBook restarted = Scenario.step(scenario.at(12.1), AlarmBook.of(before.alarms()));
        assertEquals(
                List.of(AlarmPhase.SUPPRESSED, AlarmPhase.SUPPRESSED, AlarmPhase.SUPPRESSED, AlarmPhase.UNACKNOWLEDGED),
                restarted.alarms().stream().map(Alarm::phase).toList());
        AlarmBook cool = Scenario.step(scenario.at(16.5), restarted);
        assertEquals(List.of(SOUTH), cool.alarms().stream().map(Alarm::key).toList());
        assertEquals(AlarmPhase.RETURNED_UNACKNOWLEDGED, cool.alarms().get(0).phase());
    }

    @Test
    void a_call_that_was_seen_stays_seen_while_bags_come_off_and_on() {
        AlarmBook raised = Scenario.step(scenario.at(12), AlarmBook.EMPTY);
        AlarmBook seen = AlarmEngine.acknowledge(raised, Set.of(SOUTH), "Mirja", Scenario.hours(12))
                .book();
        scenario.change(new RegisterChange.TakeOff(tag("S-1"), Scenario.hours(12.2)))
                .change(new RegisterChange.TakeOff(tag("S-3"), Scenario.hours(12.3)));
        AlarmBook one = Scenario.step(scenario.at(12.5), seen);
        assertEquals(List.of(AlarmPhase.ACKNOWLEDGED), phases(one));
        scenario.bag("S-4", Scenario.SOUTH, Scenario.AISLE, 4, 12.6)
                .bag("S-5", Scenario.SOUTH, Scenario.AISLE, 5, 12.6);
        AlarmBook three = Scenario.step(scenario.at(14.5), one);
        assertEquals(List.of(SOUTH), three.alarms().stream().map(Alarm::key).toList());
        assertEquals(List.of(AlarmPhase.ACKNOWLEDGED), phases(three));
    }

    @Test
    void shelving_the_call_of_a_house_does_not_let_its_bags_call_instead() {
        AlarmBook raised = Scenario.step(scenario.at(12), AlarmBook.EMPTY);
        AlarmBook shelved = AlarmActs.shelve(
                        raised, SOUTH, "Mirja", Scenario.hours(18), "shade is on order", Scenario.hours(12))
                .book();
        assertEquals(List.of(AlarmPhase.SHELVED), phases(Scenario.step(scenario.at(13), shelved)));
    }

    @Test
    void a_call_ends_when_the_last_bag_of_the_house_comes_off() {
        AlarmBook raised = Scenario.step(scenario.at(12), AlarmBook.EMPTY);
        for (String tag : List.of("S-1", "S-2", "S-3")) {
            scenario.change(new RegisterChange.TakeOff(tag(tag), Scenario.hours(12.5)));
        }
        assertEquals(AlarmBook.EMPTY, Scenario.step(scenario.at(12.6), raised));
    }

    private static List<AlarmPhase> phases(AlarmBook book) {
        return book.alarms().stream().map(Alarm::phase).toList();
    }

    private static TagCode tag(String tag) {
        return new TagCode(tag);
    }
}
