package bagward.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.bag.HangingTimes;
import bagward.climate.RegularSeries;
import bagward.climate.Span;
import bagward.climate.TimeGrid;
import bagward.station.House;
import bagward.station.HouseId;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DryingDampRuleTest {
    private static final Instant START = Instant.parse("2031-08-20T00:00:00Z");
    private static final House ROOM = House.drying(new HouseId("loft"), "Loft");
    private static final Rule RULE = new Rule(
            new RuleId("damp-loft"),
            "Loft damp",
            RuleKind.DRYING_DAMP,
            70,
            3,
            Duration.ofHours(12),
            Duration.ofHours(1),
            Priority.MEDIUM,
            Script.CARD);

    private static final HangingTimes ALWAYS = new HangingTimes(List.of(new Span(Instant.EPOCH, Instant.MAX)));

    private static Verdict judge(Rule rule, double... hourly) {
        return judge(rule, ALWAYS, hourly);
    }

    private static Verdict judge(Rule rule, HangingTimes hanging, double... hourly) {
        TimeGrid grid = new TimeGrid(START, Duration.ofMinutes(10), hourly.length * 6);
        double[] values = new double[grid.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = hourly[i / 6];
        }
        return DryingDampRule.judge(rule, ROOM, RegularSeries.of(grid, values), hanging, grid.at(values.length - 1));
    }

    @Test
    void damp_holds_from_when_the_limit_was_reached_and_through_dips_within_the_deadband() {
        Verdict verdict = judge(RULE, 60, 72, 68, 71);
        assertEquals(Verdict.Outcome.HOLDS, verdict.outcome());
        assertEquals(START.plus(Duration.ofHours(1)), verdict.since());
        assertEquals(71, verdict.value());
        assertEquals("house:loft", verdict.key().subject().key());
    }

    @Test
    void a_fall_past_the_deadband_ends_it() {
        Verdict verdict = judge(RULE, 72, 66, 68);
        assertEquals(Verdict.Outcome.CLEAR, verdict.outcome());
        assertEquals("not too damp for drying seed for 1.8 h: 68 %RH now, limit 70 %RH, measured", verdict.message());
    }

    @Test
    void a_long_gap_is_told_and_a_gap_to_the_end_makes_it_unknown() {
        assertEquals(
                "too damp for drying seed for 3.8 h, of which 2 h without data: 74 %RH now, limit 70 %RH, measured",
                judge(RULE, 73, Double.NaN, Double.NaN, 74).message());
        Verdict unknown = judge(RULE, 73, Double.NaN);
        assertEquals(Verdict.Outcome.UNKNOWN, unknown.outcome());
        assertEquals("not known whether too damp for drying seed, no data for 50 min", unknown.message());
    }

    @Test
    void a_place_may_have_a_limit_of_its_own() {
        Rule other =
                Acting.withLimits(RULE, new OtherLimit(Optional.of(ROOM.id()), Optional.empty(), Optional.empty(), 60));
        assertEquals(Verdict.Outcome.CLEAR, judge(RULE, 65).outcome());
        assertEquals(Verdict.Outcome.HOLDS, judge(other, 65).outcome());
    }

    @Test
    void damp_air_calls_nobody_while_no_seed_hangs_in_it() {
        Instant packed = START.plus(Duration.ofHours(1));
        Verdict before = judge(RULE, new HangingTimes(List.of()), 75, 75, 75);
        Verdict after = judge(RULE, new HangingTimes(List.of(new Span(START, packed))), 75, 75, 75);

        assertEquals(Verdict.Outcome.CLEAR, before.outcome());
        assertEquals(Verdict.Outcome.CLEAR, after.outcome());
        assertEquals(packed, after.since());
        assertEquals("no seed lot is entered as hanging there", after.message());
    }

    @Test
    void damp_counts_from_when_the_first_lot_was_hung_into_air_that_was_damp_before() {
        Instant hung = START.plus(Duration.ofHours(2));
        Verdict verdict = judge(RULE, new HangingTimes(List.of(new Span(hung, Instant.MAX))), 75, 75, 75, 75);

        assertEquals(Verdict.Outcome.HOLDS, verdict.outcome());
        assertEquals(hung, verdict.since());
        assertEquals("too damp for drying seed for 1.8 h: 75 %RH now, limit 70 %RH, measured", verdict.message());
    }
}
