package bagward.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.Quantile;
import bagward.bag.TagCode;
import bagward.mould.Ahead;
import bagward.mould.Reach;
import bagward.mould.RiskBand;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BagMouldRuleTest {
    private static final Instant START = Instant.parse("2026-02-03T00:00:00Z");
    private static final TagCode TAG = new TagCode("K7-12");
    private static final Rule RULE = rule(12);

    private static Rule rule(double limit) {
        return new Rule(
                new RuleId("mould"),
                "Mould",
                RuleKind.BAG_MOULD,
                limit,
                0,
                Duration.ZERO,
                Duration.ofHours(2),
                Priority.MEDIUM,
                Script.CARD);
    }

    private static Instant hours(double hours) {
        return START.plusSeconds(Math.round(hours * 3600));
    }

    private static Reach high(double hour) {
        return new Reach(RiskBand.HIGH, hours(hour), "Botrytis", "wet 16.0 h at 15 °C");
    }

    private static Optional<Ahead> outlook(double issued, Optional<Reach> high) {
        return Optional.of(new Ahead(hours(issued), hours(issued + 14), Optional.empty(), high));
    }

    private static Verdict judge(Rule rule, double at, Optional<Reach> reached, Optional<Ahead> ahead) {
        Instant now = hours(at);
        return new BagMouldRule(rule, now, ZoneOffset.UTC)
                .judge(TAG, Bags.humid(START, Bags.constant(30 * 60, 80)), reached, ahead);
    }

    @Test
    void a_risk_that_is_high_holds_since_it_became_so() {
        Verdict verdict = judge(RULE, 20, Optional.of(high(17)), Optional.empty());
        assertEquals(Verdict.Outcome.HOLDS, verdict.outcome());
        assertEquals(hours(17), verdict.since());
        assertEquals("high estimated risk for 3 h: wet 16.0 h at 15 °C", verdict.message());
    }

    @Test
    void a_risk_by_another_value_than_the_best_one_says_so() {
        assertEquals(
                "high estimated risk for 3 h: wet 16.0 h at 15 °C; where humidity is not measured, "
                        + "by a lower estimate (10 of 100 lie below)",
                judge(Acting.on(Quantile.SURE, RULE), 20, Optional.of(high(17)), Optional.empty())
                        .message());
    }

    @Test
    void what_becomes_high_later_is_not_known_yet() {
        assertEquals(
                Verdict.Outcome.CLEAR,
                judge(RULE, 16, Optional.of(high(17)), Optional.empty()).outcome());
    }

    @Test
    void an_outlook_within_the_limit_holds_and_says_by_when() {
        Verdict soon = judge(RULE, 15, Optional.empty(), outlook(15, Optional.of(high(27))));
        assertEquals(Verdict.Outcome.HOLDS, soon.outcome());
        assertEquals(12, soon.value(), 1e-9);
        assertEquals(hours(15), soon.since());
        assertTrue(soon.message().contains("high risk expected about"), soon.message());
        assertEquals(
                Verdict.Outcome.CLEAR,
                judge(RULE, 14.9, Optional.empty(), outlook(14, Optional.of(high(27))))
                        .outcome());
        assertEquals(
                Verdict.Outcome.CLEAR,
                judge(rule(0), 26, Optional.empty(), outlook(26, Optional.of(high(26.5))))
                        .outcome(),
                "a limit of 0 does not look ahead");
    }

    @Test
    void a_later_outlook_takes_it_back_only_after_the_off_delay() {
        Verdict holds = judge(RULE, 17, Optional.empty(), outlook(17, Optional.of(high(20))));
        AlarmBook raised = step(AlarmBook.EMPTY, 17, holds);
        assertEquals(AlarmPhase.UNACKNOWLEDGED, raised.alarms().get(0).phase());
        AlarmBook kept = step(raised, 18.5, judge(RULE, 18.5, Optional.empty(), outlook(18, Optional.empty())));
        assertEquals(AlarmPhase.UNACKNOWLEDGED, kept.alarms().get(0).phase());
        AlarmBook over = step(kept, 29, judge(RULE, 29, Optional.empty(), Optional.empty()));
        assertEquals(AlarmPhase.RETURNED_UNACKNOWLEDGED, over.alarms().get(0).phase());
    }

    @Test
    void without_data_it_is_unknown_but_what_was_reached_stays() {
        assertEquals(
                Verdict.Outcome.UNKNOWN,
                judge(RULE, 31, Optional.empty(), Optional.empty()).outcome());
        assertEquals(
                Verdict.Outcome.HOLDS,
                judge(RULE, 31, Optional.of(high(20)), Optional.empty()).outcome());
    }

    private static AlarmBook step(AlarmBook book, double hour, Verdict verdict) {
        return AlarmEngine.step(book, hours(hour), List.of(verdict), List.of(RULE))
                .book();
    }
}
