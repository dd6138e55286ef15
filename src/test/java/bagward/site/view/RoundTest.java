package bagward.site.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.alarm.ActionCard;
import bagward.alarm.Alarm;
import bagward.alarm.AlarmKey;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Priority;
import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.alarm.RuleKind;
import bagward.alarm.Subject;
import bagward.bag.TagCode;
import bagward.board.AlarmView;
import bagward.board.Board;
import bagward.station.BayId;
import bagward.station.HouseId;
import bagward.station.Spot;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RoundTest {
    private static final Instant AT = Instant.parse("2027-05-11T07:40:00Z");

    @Test
    void what_cannot_wait_comes_first_and_a_bag_has_one_line() {
        Round round = Round.of(
                board(
                        alarm("A", "due", Priority.LOW, AlarmPhase.UNACKNOWLEDGED),
                        alarm("B", "damp", Priority.HIGH, AlarmPhase.UNACKNOWLEDGED),
                        alarm("B", "due", Priority.LOW, AlarmPhase.UNACKNOWLEDGED)),
                5);
        assertEquals(
                List.of("/bag/B", "/bag/A"),
                round.shown().stream().map(ToDo::address).toList());
        assertEquals(0, round.more());
    }

    @Test
    void what_is_over_is_no_longer_urgent_and_says_so() {
        Round round = Round.of(board(alarm("A", "damp", Priority.HIGH, AlarmPhase.RETURNED_UNACKNOWLEDGED)), 5);
        assertEquals(Standing.NOTE, round.shown().get(0).standing());
        assertEquals("damp rule, over by now", round.shown().get(0).what());
    }

    @Test
    void lines_that_do_not_fit_are_counted() {
        Round round = Round.of(
                board(
                        alarm("A", "due", Priority.LOW, AlarmPhase.ACKNOWLEDGED),
                        alarm("B", "due", Priority.LOW, AlarmPhase.ACKNOWLEDGED),
                        alarm("C", "due", Priority.LOW, AlarmPhase.ACKNOWLEDGED)),
                2);
        assertEquals(2, round.shown().size());
        assertEquals(1, round.more());
    }

    private static Board board(AlarmView... alarms) {
        return new Board(AT, "S", ZoneOffset.UTC, List.of(), List.of(), List.of(), List.of(alarms), Optional.empty());
    }

    private static AlarmView alarm(String tag, String rule, Priority priority, AlarmPhase phase) {
        Alarm alarm = new Alarm(
                new AlarmKey(new RuleId(rule), new Subject.Bag(new TagCode(tag))),
                phase,
                AT,
                Optional.of(AT),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "says so");
        Rule of = new Rule(
                new RuleId(rule),
                rule + " rule",
                RuleKind.BAG_DAMP,
                90,
                0,
                Duration.ZERO,
                Duration.ZERO,
                priority,
                new ActionCard("do", "why", "soon", "proof", ""));
        return new AlarmView(alarm, of, Optional.of(new Spot(new HouseId("h"), new BayId("b"), 1)));
    }
}
