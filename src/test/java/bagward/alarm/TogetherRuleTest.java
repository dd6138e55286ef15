package bagward.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.TagCode;
import bagward.station.HouseId;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** A house that calls from three hot bags on, looked at at noon. */
class TogetherRuleTest {
    private static final Instant NOON = Instant.parse("2026-05-03T12:00:00Z");
    private static final HouseId NORTH = new HouseId("north");
    private static final Rule HOT = new Rule(
                    new RuleId("hot"),
                    "Bag too hot",
                    RuleKind.BAG_HOT,
                    33,
                    1,
                    Duration.ofMinutes(15),
                    Duration.ofMinutes(30),
                    Priority.HIGH,
                    Script.CARD)
            .together(3);

    private final TogetherRule rule = new TogetherRule(HOT, NORTH, NOON);

    @Test
    void three_hot_bags_are_one_call_of_their_house_with_the_age_of_the_first() {
        Verdict verdict = rule.judge(
                List.of(hot("A-1", 20, 34.2), hot("A-2", 50, 33.1), clear("A-3"), hot("A-4", 5, 36)), none());
        assertEquals(Verdict.Outcome.HOLDS, verdict.outcome());
        assertEquals(new AlarmKey(HOT.id(), new Subject.InHouse(NORTH)), verdict.key());
        assertEquals(minutesAgo(50), verdict.since());
        assertEquals(
                "3 of 4 bags hot, the longest 50 min: up to 36 °C now, limit 33 °C, estimated; A-2, A-1, A-4",
                verdict.message());
    }

    @Test
    void two_hot_bags_call_each_for_itself() {
        Verdict verdict = rule.judge(List.of(hot("A-1", 20, 34), hot("A-2", 50, 33), clear("A-3")), none());
        assertEquals(Verdict.Outcome.CLEAR, verdict.outcome());
        assertEquals("2 of 3 bags hot, too few to call together", verdict.message());
    }

    @Test
    void the_last_hot_bag_of_a_hot_noon_stays_with_the_call_of_the_house() {
        List<HeldSpan> recent = List.of(span(300, 100), span(250, 90), span(200, 0));
        assertEquals(
                Verdict.Outcome.HOLDS,
                rule.judge(List.of(hot("A-1", 200, 34), clear("A-2")), () -> recent)
                        .outcome());
    }

    @Test
    void three_bags_that_were_hot_one_after_the_other_are_no_call_of_the_house() {
        List<HeldSpan> recent = List.of(span(300, 200), span(200, 100), span(100, 0));
        assertEquals(
                Verdict.Outcome.CLEAR,
                rule.judge(List.of(hot("A-1", 100, 34)), () -> recent).outcome());
    }

    @Test
    void it_is_over_since_the_last_of_its_bags_was_and_a_bag_that_is_new_does_not_prolong_it() {
        TogetherMember cooled = new TogetherMember(
                new TagCode("A-1"),
                single("A-1", Verdict.Outcome.CLEAR, 40, 30),
                33,
                false,
                Optional.of(minutesAgo(40)));
        TogetherMember isNew = new TogetherMember(
                new TagCode("A-2"), single("A-2", Verdict.Outcome.CLEAR, 5, 30), 33, false, Optional.empty());
        assertEquals(minutesAgo(40), rule.judge(List.of(cooled, isNew), none()).since());
    }

    @Test
    void each_bag_is_held_against_its_own_limit_and_the_message_says_so() {
        TogetherMember tender = new TogetherMember(
                new TagCode("T-1"), single("T-1", Verdict.Outcome.HOLDS, 10, 29), 28, true, Optional.empty());
        String message = rule.judge(List.of(tender, hot("A-1", 20, 34), hot("A-2", 5, 33)), none())
                .message();
        assertTrue(message.contains("each against its own limit of 28 to 33 °C, 1 measured"), message);
    }

    @Test
    void a_house_of_which_nothing_is_known_is_suppressed_by_the_silence_of_its_sensor() {
        TogetherMember unknown = new TogetherMember(
                new TagCode("A-1"), single("A-1", Verdict.Outcome.UNKNOWN, 20, 30), 33, false, Optional.empty());
        TogetherMember silent = new TogetherMember(
                new TagCode("A-2"),
                single("A-2", Verdict.Outcome.UNKNOWN, 20, 30).suppressedBy("not known: sensor North post is silent"),
                33,
                false,
                Optional.empty());
        Verdict verdict = rule.judge(List.of(unknown, silent), none());
        assertEquals(Verdict.Outcome.SUPPRESSED, verdict.outcome());
        assertEquals("not known: sensor North post is silent", verdict.message());
        assertEquals(
                Verdict.Outcome.UNKNOWN, rule.judge(List.of(unknown), none()).outcome());
        assertEquals(
                Verdict.Outcome.CLEAR,
                rule.judge(List.of(unknown, silent, clear("A-3")), none()).outcome());
    }

    @Test
    void the_order_of_the_bags_does_not_matter() {
        List<TogetherMember> members = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            members.add(i % 3 == 0 ? clear("C-" + i) : hot("H-" + i, 10 + i % 4, 34 + i % 5));
        }
        Verdict first = rule.judge(members, none());
        for (int seed = 0; seed < 20; seed++) {
            Collections.shuffle(members, new Random(seed));
            assertEquals(first, rule.judge(members, none()));
        }
    }

    @Test
    void a_bag_that_is_left_to_its_house_says_so_and_one_that_is_not_hot_does_not() {
        Verdict hot = single("A-1", Verdict.Outcome.HOLDS, 20, 34);
        Verdict covered = TogetherRule.covered(hot, HOT, "North house");
        assertEquals(Verdict.Outcome.COVERED, covered.outcome());
        assertEquals(hot.since(), covered.since());
        assertEquals("“Bag too hot” calls for North house as a whole", covered.message());
        Verdict clear = single("A-1", Verdict.Outcome.CLEAR, 20, 30);
        assertEquals(clear, TogetherRule.covered(clear, HOT, "North house"));
    }

    private static Supplier<List<HeldSpan>> none() {
        return List::of;
    }

    private static TogetherMember hot(String tag, int minutes, double celsius) {
        return new TogetherMember(
                new TagCode(tag), single(tag, Verdict.Outcome.HOLDS, minutes, celsius), 33, false, Optional.empty());
    }

    private static TogetherMember clear(String tag) {
        return new TogetherMember(
                new TagCode(tag), single(tag, Verdict.Outcome.CLEAR, 600, 25), 33, false, Optional.empty());
    }

    private static Verdict single(String tag, Verdict.Outcome outcome, int minutes, double celsius) {
        AlarmKey key = new AlarmKey(HOT.id(), new Subject.Bag(new TagCode(tag)));
        return new Verdict(key, outcome, minutesAgo(minutes), celsius, "");
    }

    private static HeldSpan span(int fromMinutesAgo, int toMinutesAgo) {
        return new HeldSpan(minutesAgo(fromMinutesAgo), minutesAgo(toMinutesAgo));
    }

    private static Instant minutesAgo(int minutes) {
        return NOON.minusSeconds(60L * minutes);
    }
}
