package bagward.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.TagCode;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the program says about rules that ask too much. */
class AlarmAdviceTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Copenhagen");
    private static final Rule HIGH = new Rule(
            new RuleId("hot"),
            "Bag too hot",
            RuleKind.BAG_HOT,
            33,
            1,
            Duration.ofMinutes(15),
            Duration.ofMinutes(30),
            Priority.HIGH,
            Script.CARD);
    private static final List<Rule> RULES = List.of(Script.RULE, HIGH);

    private final List<AlarmEvent> events = new ArrayList<>();

    private void event(int minute, RuleId rule, String tag, AlarmPhase from, AlarmPhase to) {
        AlarmKey key = new AlarmKey(rule, new Subject.Bag(new TagCode(tag)));
        events.add(new AlarmEvent(Script.minute(minute), key, from, to, "Mirja", ""));
    }

    private void raised(int minute, RuleId rule, String tag) {
        event(minute, rule, tag, AlarmPhase.PENDING, AlarmPhase.UNACKNOWLEDGED);
    }

    private List<AlarmAdvice.Advice> advice(AlarmBook book) {
        AlarmLoad load = AlarmLoad.of(events, book, Script.minute(4000), ZONE);
        return AlarmAdvice.of(load, 2, RULES, subject -> subject.key().replace(':', ' '));
    }

    @Test
    void a_bearable_load_needs_no_advice() {
        raised(0, Script.RULE.id(), "A-1");
        event(5, Script.RULE.id(), "A-1", AlarmPhase.UNACKNOWLEDGED, AlarmPhase.ACKNOWLEDGED);
        assertEquals(List.of(), advice(AlarmBook.EMPTY));
    }

    @Test
    void too_many_a_day_names_the_rule_that_calls_most_and_its_numbers() {
        for (int i = 0; i < 12; i++) {
            raised(i * 200, Script.RULE.id(), "A-" + i);
        }
        raised(2399, HIGH.id(), "B-1");
        AlarmAdvice.Advice said = advice(AlarmBook.EMPTY).get(0);
        assertEquals("6.5 new alarms a day; a person with other work bears three to six.", said.found());
        assertEquals(
                "Most come from “Bag damp” (92 %): raise its limit (now 90 %RH) or lengthen its on-delay (now 3 min),"
                        + " after a rehearsal on the past.",
                said.tune());
    }

    @Test
    void chattering_asks_for_a_wider_deadband_and_names_the_bags() {
        for (int i = 0; i < 3; i++) {
            raised(i * 60, Script.RULE.id(), "A-1");
        }
        AlarmAdvice.Advice said = advice(AlarmBook.EMPTY).get(0);
        assertEquals("“Bag damp” chattered, at least 3 times within 6 h: bag A-1.", said.found());
        assertEquals("Widen its deadband (now 2 %RH) or lengthen its off-delay (now 2 min).", said.tune());
    }

    @Test
    void a_standing_alarm_asks_to_be_done_or_shelved() {
        AlarmBook book =
                new Script(Script.RULE, "####").step(AlarmBook.EMPTY, 3).book();
        AlarmAdvice.Advice said = advice(book).get(0);
        assertEquals("“Bag damp” has stood for more than a day: bag A-1.", said.found());
        assertTrue(said.tune().startsWith("Do what its card says, or shelve it"), said.tune());
    }

    @Test
    void too_many_high_ones_and_long_waits_are_said() {
        raised(0, HIGH.id(), "A-1");
        event(600, HIGH.id(), "A-1", AlarmPhase.UNACKNOWLEDGED, AlarmPhase.ACKNOWLEDGED);
        List<String> found =
                advice(AlarmBook.EMPTY).stream().map(AlarmAdvice.Advice::found).toList();
        assertEquals(
                List.of(
                        "1 of 1 alarms were high.",
                        "Half of the alarms waited for more than 10 h until somebody saw them."),
                found);
    }

    @Test
    void rules_that_are_watched_no_more_are_not_advised_on() {
        for (int i = 0; i < 3; i++) {
            raised(i * 60, new RuleId("gone"), "A-1");
        }
        assertEquals(List.of(), advice(AlarmBook.EMPTY));
    }
}
