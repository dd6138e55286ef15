package bagward.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.fault.Fault;
import bagward.fault.RefusedInputException;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people do with alarms, minute by minute; on-delay 3 min, off-delay 2 min. */
class AlarmActsTest {
    /** Acts: h shelves for three minutes, o takes out of service, b brings back, a acknowledges. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            a shelved alarm comes back when its time is over     | ######### | ....h    | PPPUHHHUU
            a shelved alarm that is over by then is normal       | #####.... | ....h    | PPPUHHH..
            a shelved alarm of which nothing is known is shown   | #####____ | ....h    | PPPUHHHUU
            a shelved alarm whose bag came off is gone           | ######--- | ....h    | PPPUHH...
            a shelved alarm that a silence suppresses by then    | #####xxxx | ....h    | PPPUHHHSS
            a confirmed alarm asks again after shelving          | ######### | ...ah    | PPPAHHHUU
            shelved and brought back before its time             | ######### | ....hb   | PPPUHHUUU
            out of service until brought back                    | ######### | ....o..b | PPPUOOOOU
            out of service while normal, then normal             | ......... | .o...b   | .OOOOO...
            out of service while normal, nothing known after     | ...______ | .o...b   | .OOOOO...
            out of service while normal, then held for long      | .######## | o....b   | OOOOOOUUU
            """)
    void every_act(String name, String verdicts, String acts, String phases) {
        Script script = new Script(Script.RULE, verdicts);
        AlarmBook book = AlarmBook.EMPTY;
        StringBuilder seen = new StringBuilder();
        for (int i = 0; i < verdicts.length(); i++) {
            book = script.step(book, i).book();
            book = act(book, i < acts.length() ? acts.charAt(i) : ' ', Script.minute(i));
            seen.append(Script.letter(book.find(Script.KEY)));
        }
        assertEquals(phases, seen.toString(), name);
    }

    private static AlarmBook act(AlarmBook book, char act, Instant now) {
        return switch (act) {
            case 'a' ->
                AlarmEngine.acknowledge(book, Set.of(Script.KEY), "Mirja", now).book();
            case 'h' ->
                AlarmActs.shelve(book, Script.KEY, "Mirja", now.plusSeconds(180), "bay is washed", now)
                        .book();
            case 'o' ->
                AlarmActs.takeOutOfService(book, Script.KEY, "Mirja", "calibration", now)
                        .book();
            case 'b' -> AlarmActs.bringBack(book, Script.KEY, "Mirja", now).book();
            default -> book;
        };
    }

    @Test
    void every_act_leaves_an_event_that_names_who_did_it() {
        Instant now = Script.minute(4);
        AlarmBook raised =
                new Script(Script.RULE, "####").step(AlarmBook.EMPTY, 3).book();
        Step shelved = AlarmActs.shelve(raised, Script.KEY, "Orri", now.plusSeconds(60), "bay is washed", now);
        AlarmEvent event = shelved.events().get(0);
        assertEquals("Orri", event.by());
        assertEquals(AlarmPhase.SHELVED, event.to());
        assertEquals("bay is washed", event.why());
        assertEquals(
                "bay is washed",
                shelved.book()
                        .find(Script.KEY)
                        .flatMap(Alarm::aside)
                        .orElseThrow()
                        .why());
        Step back = AlarmActs.bringBack(shelved.book(), Script.KEY, "Mirja", now);
        assertEquals("Mirja", back.events().get(0).by());
        assertTrue(back.events().get(0).broughtBack());
    }

    @Test
    void what_suppresses_an_alarm_by_design_stands_in_its_event() {
        AlarmBook raised =
                new Script(Script.RULE, "####").step(AlarmBook.EMPTY, 3).book();
        Step step = new Script(Script.RULE, "####x").step(raised, 4);
        assertEquals(AlarmPhase.SUPPRESSED, step.events().get(0).to());
        assertEquals("as scripted", step.events().get(0).why());
    }

    @Test
    void a_shelving_names_every_fault_at_once() {
        RefusedInputException refused = assertThrows(
                RefusedInputException.class,
                () -> AlarmActs.shelve(
                        AlarmBook.EMPTY,
                        Script.KEY,
                        " ",
                        Script.START.plus(AlarmActs.LONGEST_SHELVING).plusSeconds(1),
                        "",
                        Script.START));
        assertEquals(
                List.of("who", "why", "until", "alarm"),
                refused.faults().stream().map(Fault::place).toList());
    }

    @Test
    void what_no_person_has_hidden_cannot_be_brought_back() {
        assertThrows(
                RefusedInputException.class,
                () -> AlarmActs.bringBack(AlarmBook.EMPTY, Script.KEY, "Mirja", Script.START));
    }
}
