package bagward.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The life of an alarm, minute by minute; on-delay 3 min, off-delay 2 min. */
class AlarmEngineTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', ignoreLeadingAndTrailingWhitespace = true, textBlock = """
        nothing stays nothing                          | ......       | ''         | ......
        a spike shorter than the on-delay is no alarm  | .###..       | ''         | .PPP..
        raised when the on-delay is over               | .#####       | ''         | .PPPUU
        missing data do not raise a running on-delay   | .##____      | ''         | .PPPPPP
        missing data do not stop the on-delay's clock  | .##___#      | ''         | .PPPPPU
        missing data neither raise nor clear           | .####______  | ''         | .PPPUUUUUUU
        nothing known at all is no alarm               | ______       | ''         | ......
        confirmed while it holds                       | #######      | ....a      | PPPUAAA
        a dip shorter than the off-delay is no return  | ####..###    | ''         | PPPUUUUUU
        returned when the off-delay is over            | #####....    | ''         | PPPUUUURR
        missing data do not stop the off-delay's clock | #####.__.    | ''         | PPPUUUUUR
        returned stays listed until confirmed          | ####.....    | .......a.  | PPPUUUR..
        confirmed, then over: gone from the list       | ####.....    | ...a       | PPPAAA...
        returned, then held again: raised again        | ####...####. | ''         | PPPUUURRRRUU
        subject gone while pending                     | ##--         | ''         | PP..
        subject gone while unacknowledged              | ####--       | ''         | PPPU..
        subject gone while acknowledged                | #####--      | ....a      | PPPUA..
        subject gone while returned                    | ####...--    | ''         | PPPUUUR..
        suppressed while pending                       | ##xx##       | ''         | PP..PP
        suppressed while unacknowledged, holds after   | ####xx####   | ''         | PPPUSSPPPU
        suppressed, clear after: it is still told      | ####xx...    | ''         | PPPUSSSSR
        suppressed, confirmed before, clear after      | ####xx...    | ...a       | PPPASSSS.
        returned stays listed while suppressed         | ####...xx    | ''         | PPPUUURRR
        left to another alarm while pending            | ##oo##       | ''         | PP..UU
        left to another alarm, clear after: not told   | ####oo...    | ''         | PPPUSSSS.
        left to another alarm, holds after: anew       | ####oo##     | ''         | PPPUSSUU
        seen, then left to another alarm, holds after  | ####oo##     | ...a       | PPPASSAA
        silent, then left to another, clear after      | ####xoo...   | ''         | PPPUSSSSS.
        returned stays listed beside another alarm     | ####...oo    | ''         | PPPUUURRR
        """)
    void every_transition(String name, String verdicts, String acts, String phases) {

        assertEquals(phases, new Script(Script.RULE, verdicts).play(acts), name);
    }

    @Test
    void a_confirmed_alarm_that_still_holds_asks_again_after_its_time() {
        Rule daily = new Rule(
                Script.RULE.id(),
                "Overdue",
                RuleKind.BAG_DUE,
                0,
                0,
                Duration.ZERO,
                Duration.ZERO,
                Optional.of(Duration.ofMinutes(4)),
                Priority.LOW,
                Script.CARD);
        assertEquals("UAAAAUUA", new Script(daily, "########").play(".a.....a"));
    }

    @Test
    void without_delays_an_alarm_is_raised_and_gone_at_once() {
        Rule due = new Rule(
                Script.RULE.id(),
                "Due",
                RuleKind.BAG_DUE,
                0,
                0,
                Duration.ZERO,
                Duration.ZERO,
                Priority.LOW,
                Script.CARD);
        assertEquals(".UA.", new Script(due, ".##.").play("..a"));
    }

    @Test
    void an_event_tells_who_did_what_and_when() {
        Script script = new Script(Script.RULE, "####");
        Step raised = script.step(AlarmBook.EMPTY, 3);
        assertEquals(
                List.of(new AlarmEvent(
                        Script.minute(3),
                        Script.KEY,
                        AlarmPhase.NORMAL,
                        AlarmPhase.UNACKNOWLEDGED,
                        AlarmEngine.RULE,
                        "as scripted")),
                raised.events());
        Step seen = AlarmEngine.acknowledge(raised.book(), Set.of(Script.KEY), "Mirja", Script.minute(4));
        assertEquals("Mirja", seen.events().get(0).by());
        assertEquals(Optional.of("Mirja"), seen.book().find(Script.KEY).flatMap(Alarm::acknowledgedBy));
        assertFalse(AlarmEngine.acknowledge(seen.book(), Set.of(Script.KEY), "Orri", Script.minute(5))
                .changed());
        assertFalse(AlarmEngine.acknowledge(seen.book(), Set.of(Script.OTHER), "Orri", Script.minute(5))
                .changed());
    }

    @Test
    void a_bag_taken_off_leaves_an_event_and_no_alarm() {
        Script script = new Script(Script.RULE, "####-");
        AlarmBook raised = script.step(AlarmBook.EMPTY, 3).book();
        Step off = script.step(raised, 4);
        assertEquals(AlarmBook.EMPTY, off.book());
        assertEquals(AlarmPhase.NORMAL, off.events().get(0).to());
        assertTrue(off.events().get(0).message().startsWith("no longer watched"));
    }

    @Test
    void a_running_on_delay_leaves_no_event() {
        Script script = new Script(Script.RULE, ".##..");
        AlarmBook book = AlarmBook.EMPTY;
        for (int i = 0; i < 5; i++) {
            Step step = script.step(book, i);
            assertFalse(step.changed());
            book = step.book();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void asking_twice_at_one_time_changes_nothing(long seed) {
        Script script = new Script(Script.RULE, randomVerdicts(new Random(seed), 400));
        AlarmBook book = AlarmBook.EMPTY;
        for (int i = 0; i < 400; i++) {
            book = script.step(book, i).book();
            Step again = script.step(book, i);
            assertFalse(again.changed());
            assertEquals(book, again.book());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void a_book_saved_and_loaded_goes_on_as_if_nothing_had_happened(long seed) {
        Script script = new Script(Script.RULE, randomVerdicts(new Random(seed), 400));
        AlarmBook running = AlarmBook.EMPTY;
        AlarmBook restarted = AlarmBook.EMPTY;
        List<AlarmEvent> ofRunning = new ArrayList<>();
        List<AlarmEvent> ofRestarted = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            Step step = script.step(running, i);
            running = step.book();
            ofRunning.addAll(step.events());
            Step other = script.step(AlarmBook.of(List.copyOf(restarted.alarms())), i);
            restarted = other.book();
            ofRestarted.addAll(other.events());
        }
        assertEquals(ofRunning, ofRestarted);
        assertTrue(ofRunning.size() > 3, "the script must have raised something");
    }

    @Test
    void a_program_that_slept_through_the_on_delay_raises_at_its_next_step() {
        Script script = new Script(Script.RULE, ".##########");
        AlarmBook before = script.step(AlarmBook.EMPTY, 2).book();
        Alarm alarm = script.step(before, 10).book().find(Script.KEY).orElseThrow();
        assertEquals(AlarmPhase.UNACKNOWLEDGED, alarm.phase());
        assertEquals(Script.minute(1), alarm.since());
    }

    @Test
    void a_removed_rule_takes_its_alarms_along() {
        AlarmBook raised =
                new Script(Script.RULE, "####").step(AlarmBook.EMPTY, 3).book();
        Step step = AlarmEngine.step(raised, Script.minute(4), new Script(Script.RULE, "#####").at(4), List.of());
        assertEquals(AlarmBook.EMPTY, step.book());
        assertEquals(1, step.events().size());
    }

    @Test
    void a_longer_on_delay_does_not_take_back_what_was_raised() {
        AlarmBook raised =
                new Script(Script.RULE, "####").step(AlarmBook.EMPTY, 3).book();
        Rule slower = new Rule(
                Script.RULE.id(),
                "Damp",
                RuleKind.BAG_DAMP,
                90,
                2,
                Duration.ofHours(9),
                Duration.ZERO,
                Priority.LOW,
                Script.CARD);
        Step step = new Script(slower, "#####").step(raised, 4);
        assertEquals('U', Script.letter(step.book().find(Script.KEY)));
    }

    @ParameterizedTest(name = "reloaded with an on-delay of {0} min: {1}")
    @CsvSource({"9, P", "2, U"})
    void a_running_on_delay_goes_on_from_its_start_when_the_rules_are_reloaded(int minutes, char phase) {
        AlarmBook running =
                new Script(Script.RULE, "###").step(AlarmBook.EMPTY, 2).book();
        assertEquals('P', Script.letter(running.find(Script.KEY)));
        Rule reloaded = new Rule(
                Script.RULE.id(),
                "Damp",
                RuleKind.BAG_DAMP,
                90,
                2,
                Duration.ofMinutes(minutes),
                Duration.ZERO,
                Priority.LOW,
                Script.CARD);
        AlarmBook after = AlarmBook.of(running.alarms());
        Step step = new Script(reloaded, "####").step(after, 3);
        assertEquals(phase, Script.letter(step.book().find(Script.KEY)));
        assertEquals(
                Script.minute(0), step.book().find(Script.KEY).orElseThrow().since());
    }

    private static String randomVerdicts(Random random, int length) {
        StringBuilder verdicts = new StringBuilder();
        while (verdicts.length() < length) {
            verdicts.append(
                    String.valueOf("###..._xo".charAt(random.nextInt(9))).repeat(1 + random.nextInt(8)));
        }
        return verdicts.substring(0, length);
    }
}
