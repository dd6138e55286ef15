package bagward.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.bag.BagClimate;
import bagward.bag.Quantile;
import bagward.bag.TagCode;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class BagRulesTest {
    private static final Instant START = Instant.parse("2026-02-03T00:00:00Z");
    private static final TagCode TAG = new TagCode("K7-12");

    private static Rule rule(RuleKind kind, double limit, double deadband) {
        return new Rule(
                new RuleId("rule"),
                "A rule",
                kind,
                limit,
                deadband,
                Duration.ofHours(1),
                Duration.ofMinutes(30),
                Priority.LOW,
                Script.CARD);
    }

    private static Instant hours(double hours) {
        return START.plusSeconds(Math.round(hours * 3600));
    }

    @Test
    void a_damp_bag_says_how_long_how_damp_and_by_what_it_was_judged() {
        double[] percent = Bags.constant(600, 80);
        Arrays.fill(percent, 150, 600, 93.2);
        Verdict verdict =
                BagDampRule.judge(rule(RuleKind.BAG_DAMP, 90, 2), TAG, Bags.humid(START, percent), hours(9.99));
        assertEquals(Verdict.Outcome.HOLDS, verdict.outcome());
        assertEquals(hours(2.5), verdict.since());
        assertEquals("damp 7.5 h: 93 %RH now, limit 90 %RH, estimated", verdict.message());
    }

    @Test
    void hours_without_data_inside_a_damp_spell_are_named() {
        double[] percent = Bags.constant(600, 93);
        Arrays.fill(percent, 300, 420, Double.NaN);
        Verdict verdict =
                BagDampRule.judge(rule(RuleKind.BAG_DAMP, 90, 2), TAG, Bags.humid(START, percent), hours(9.99));
        assertEquals("damp 10 h, of which 2 h without data: 93 %RH now, limit 90 %RH, estimated", verdict.message());
    }

    @Test
    void damp_acts_on_the_middle_of_the_band_not_on_its_upper_end() {
        Verdict verdict = BagDampRule.judge(
                rule(RuleKind.BAG_DAMP, 90, 2), TAG, Bags.humid(START, Bags.constant(60, 89)), hours(0.99));
        assertEquals(Verdict.Outcome.CLEAR, verdict.outcome());
    }

    @Test
    void a_rule_that_acts_on_an_upper_estimate_says_so() {
        Rule rule = Acting.on(Quantile.POSSIBLE, rule(RuleKind.BAG_DAMP, 90, 2));
        BagClimate upper = Bags.humid(START, Bags.constant(60, 89)).at(rule.actsOn());
        Verdict verdict = BagDampRule.judge(rule, TAG, upper, hours(0.99));
        assertEquals(Verdict.Outcome.HOLDS, verdict.outcome());
        assertEquals(
                "damp 59 min: 91 %RH now by an upper estimate (90 of 100 lie below), limit 90 %RH, estimated",
                verdict.message());
    }

    @Test
    void a_measured_bag_is_judged_by_what_was_measured_whatever_the_rule_acts_on() {
        Rule rule = Acting.on(Quantile.SURE, rule(RuleKind.BAG_HOT, 30, 1));
        BagClimate lower = Bags.warm(START, Bags.constant(60, 30.2)).at(rule.actsOn());
        Verdict verdict = BagHotRule.judge(rule, TAG, lower, hours(0.99));
        assertEquals("hot 59 min: 30.2 °C now, limit 30 °C, measured", verdict.message());
    }

    @Test
    void a_bag_without_data_is_neither_damp_nor_dry() {
        double[] percent = Bags.constant(120, 95);
        Arrays.fill(percent, 60, 120, Double.NaN);
        Verdict verdict =
                BagDampRule.judge(rule(RuleKind.BAG_DAMP, 90, 2), TAG, Bags.humid(START, percent), hours(1.99));
        assertEquals(Verdict.Outcome.UNKNOWN, verdict.outcome());
        assertEquals("not known whether damp: no data for 59 min", verdict.message());
    }

    @Test
    void a_hot_bag_with_a_sensor_says_that_it_was_measured() {
        double[] degrees = Bags.constant(240, 24);
        Arrays.fill(degrees, 60, 240, 31.4);
        Verdict verdict = BagHotRule.judge(rule(RuleKind.BAG_HOT, 30, 1), TAG, Bags.warm(START, degrees), hours(3.99));
        assertEquals("hot 3 h: 31.4 °C now, limit 30 °C, measured", verdict.message());
    }

    @Test
    void a_bag_is_due_from_its_due_time_on_and_overdue_days_later() {
        Instant due = hours(7 * 24);
        Verdict before = BagDueRule.judge(rule(RuleKind.BAG_DUE, 0, 0), TAG, START, due, due.minusSeconds(1));
        assertEquals(Verdict.Outcome.CLEAR, before.outcome());
        Verdict at = BagDueRule.judge(rule(RuleKind.BAG_DUE, 0, 0), TAG, START, due, due);
        assertEquals(Verdict.Outcome.HOLDS, at.outcome());
        assertEquals(due, at.since());
        assertEquals("on for 7 days, due to come off now", at.message());
        Verdict late = BagDueRule.judge(rule(RuleKind.BAG_DUE, 2, 0), TAG, START, due, hours(9.5 * 24));
        assertEquals(hours(9 * 24), late.since());
        assertEquals("on for 9.5 days, was due to come off 2.5 days ago", late.message());
    }
}
