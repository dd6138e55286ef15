package bagward.board;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.alarm.AlarmKey;
import bagward.alarm.Priority;
import bagward.alarm.Rule;
import bagward.alarm.RuleId;
import bagward.alarm.RuleKind;
import bagward.alarm.Subject;
import bagward.alarm.Verdict;
import bagward.bag.TagCode;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A bag that stays wet, told hour by hour. */
class OneCauseTest {
    private static final Rule POSSIBLE = new Rule(
            new RuleId("possible"),
            "possible",
            RuleKind.BAG_MOULD,
            18,
            0,
            Duration.ZERO,
            Duration.ofHours(2),
            Priority.LOW,
            Scenario.MOULD.card());
    private static final List<Rule> RULES = List.of(Scenario.DAMP, Scenario.MOULD, POSSIBLE, Scenario.DUE);

    @Test
    void a_risk_that_came_about_in_the_same_damp_time_calls_alone() {
        Verdict damp = verdict(Scenario.DAMP, Verdict.Outcome.HOLDS, 10);
        Verdict risk = verdict(Scenario.MOULD, Verdict.Outcome.HOLDS, 20);
        List<Verdict> told = at(21, damp, risk);
        assertEquals(Verdict.Outcome.COVERED, told.get(0).outcome());
        assertEquals("“mould” calls for the same", told.get(0).message());
        assertEquals(risk, told.get(1));
    }

    @Test
    void a_bag_that_goes_damp_after_the_risk_was_reached_calls_by_itself() {
        Verdict damp = verdict(Scenario.DAMP, Verdict.Outcome.HOLDS, 30);
        Verdict risk = verdict(Scenario.MOULD, Verdict.Outcome.HOLDS, 20);
        assertEquals(List.of(damp, risk), at(40, damp, risk));
    }

    @Test
    void a_risk_that_is_only_possible_is_left_to_one_that_is_likely() {
        Verdict possible = verdict(POSSIBLE, Verdict.Outcome.HOLDS, 10);
        Verdict likely = verdict(Scenario.MOULD, Verdict.Outcome.HOLDS, 20);
        assertEquals(
                List.of(Verdict.Outcome.COVERED, Verdict.Outcome.HOLDS),
                at(21, possible, likely).stream().map(Verdict::outcome).toList());
        assertEquals(List.of(possible), at(21, possible));
    }

    @Test
    void without_a_risk_damp_calls() {
        Verdict damp = verdict(Scenario.DAMP, Verdict.Outcome.HOLDS, 10);
        Verdict none = verdict(Scenario.MOULD, Verdict.Outcome.CLEAR, 12);
        assertEquals(List.of(damp, none), at(30, damp, none));
    }

    @Test
    void what_has_nothing_to_do_with_damp_is_left_alone() {
        Verdict due = verdict(Scenario.DUE, Verdict.Outcome.HOLDS, 10);
        Verdict risk = verdict(Scenario.MOULD, Verdict.Outcome.HOLDS, 20);
        assertEquals(List.of(due, risk), at(21, due, risk));
    }

    @Test
    void a_damp_bag_that_dried_is_over_and_not_suppressed() {
        Verdict dry = verdict(Scenario.DAMP, Verdict.Outcome.CLEAR, 25);
        Verdict risk = verdict(Scenario.MOULD, Verdict.Outcome.HOLDS, 30);
        assertEquals(List.of(dry, risk), at(31, dry, risk));
    }

    private static List<Verdict> at(double hour, Verdict... verdicts) {
        return new OneCause(RULES, Scenario.hours(hour)).of(List.of(verdicts));
    }

    private static Verdict verdict(Rule rule, Verdict.Outcome outcome, double since) {
        AlarmKey key = new AlarmKey(rule.id(), new Subject.Bag(new TagCode("S-1")));
        return new Verdict(key, outcome, Scenario.hours(since), 95, "as it is");
    }
}
