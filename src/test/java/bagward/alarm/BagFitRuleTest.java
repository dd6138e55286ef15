package bagward.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.bag.BagFit;
import bagward.bag.Spread;
import bagward.bag.TagCode;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A bag that has fallen shut, or is off, by the sensor in it. */
class BagFitRuleTest {
    private static final TagCode TAG = new TagCode("R26-0147");
    private static final Instant AT = Instant.parse("2026-04-12T09:00:00Z");

    @ParameterizedTest
    @CsvSource({
        "SHUT, 0.95, HOLDS, CLEAR",
        "SHUT, 0.57, CLEAR, CLEAR",
        "OFF,  0.05, CLEAR, HOLDS",
        "FITS, 0.95, CLEAR, CLEAR",
        "UNKNOWN, 0.5, UNKNOWN, UNKNOWN"
    })
    void the_check_must_be_sure_and_the_change_large_enough(
            BagFit.Verdict verdict, double closure, Verdict.Outcome shut, Verdict.Outcome off) {
        BagFit fit = new BagFit(verdict, AT, AT.minusSeconds(7200), closure, new Spread(0.5, 0.05), "numbers");

        assertEquals(shut, BagFitRule.judge(rule(RuleKind.BAG_SHUT), TAG, fit).outcome());
        assertEquals(off, BagFitRule.judge(rule(RuleKind.BAG_OFF), TAG, fit).outcome());
    }

    @Test
    void a_verdict_tells_since_when_and_by_how_much() {
        BagFit fit = new BagFit(
                BagFit.Verdict.SHUT,
                AT,
                AT.minusSeconds(7200),
                0.9,
                new Spread(0.5, 0.05),
                "Closure 0.90, expected 0.50.");

        Verdict verdict = BagFitRule.judge(rule(RuleKind.BAG_SHUT), TAG, fit);

        assertEquals(AT.minusSeconds(7200), verdict.since());
        assertEquals(0.4, verdict.value(), 1e-9);
        assertEquals("Closure 0.90, expected 0.50.", verdict.message());
    }

    private static Rule rule(RuleKind kind) {
        return new Rule(
                new RuleId("fit"), "Fit", kind, 0.1, 0, Duration.ZERO, Duration.ZERO, Priority.MEDIUM, Script.CARD);
    }
}
