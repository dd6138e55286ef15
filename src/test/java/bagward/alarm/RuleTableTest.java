package bagward.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.bag.TagCode;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Rules about the climate in a bag over written series, looked at every ten minutes and noted every two hours: limit 90,
 * deadband 2, on-delay 10 h, off-delay 1 h. A series is a list of values with how many minutes each lasts; {@code _} is a
 * gap.
 */
class RuleTableTest {
    private static final TagCode TAG = new TagCode("A-1");
    private static final ZoneId ZONE = ZoneId.of("Europe/Copenhagen");
    private static final Rule DAMP = rule(RuleKind.BAG_DAMP, 90);
    private static final Rule HOT = rule(RuleKind.BAG_HOT, 30);

    private static Rule rule(RuleKind kind, double limit) {
        return new Rule(
                Script.RULE.id(),
                "rule",
                kind,
                limit,
                2,
                Duration.ofHours(10),
                Duration.ofHours(1),
                Priority.LOW,
                Script.CARD);
    }

    @ParameterizedTest(name = "damp: {0}")
    @CsvSource(delimiter = '|', textBlock = """
        a damp day and night is raised in its tenth hour       | 95x1440               | PPPPUUUUUUU
        a night that dries in time is no alarm                 | 95x500 80x460         | PPPP...
        a gap neither stops nor restarts the clock             | 95x300 _x180 95x300   | PPPPUU
        nothing is raised on what is not known                 | 95x500 _x560          | PPPPPPPP
        a gap does not end what was raised                     | 95x660 _x300          | PPPPUUU
        a dip within the deadband is none                      | 95x300 89x120 95x480  | PPPPUUU
        a dip past the deadband starts anew                    | 95x300 87x70 95x690   | PP.PPPPP
        over when it has been gone for the off-delay           | 95x660 80x300         | PPPPURR
        back within the off-delay it has never been gone       | 95x660 80x50 95x250   | PPPPUUU
        a sensor stuck at 100 is one alarm and no chatter      | 100x2000              | PPPPUUUUUUUUUUUU
        a sensor stuck below the limit is none                 | 85x1440               | ...........
        a sensor stuck within the deadband is none             | 89x1440               | ...........
        no data at all is none                                 | _x720                 | .....
        """)
    void damp_minute_by_minute(String name, String series, String phases) {
        assertEquals(phases, play(DAMP, values(series), Script.START), name);
    }

    @ParameterizedTest(name = "hot: {0}")
    @CsvSource(delimiter = '|', textBlock = """
        hot for the on-delay is raised         | 31x1440              | PPPPUUUUUUU
        a cool hour starts anew                | 31x300 20x70 31x590  | PP.PPPP
        a gap neither stops nor restarts       | 31x300 _x180 31x300  | PPPPUU
        """)
    void hot_minute_by_minute(String name, String series, String phases) {
        assertEquals(phases, play(HOT, values(series), Script.START), name);
    }

    @Test
    void hours_that_come_late_count_as_if_they_had_come_in_time() {
        double[] inTime = values("95x720");
        double[] before = values("_x360 95x360");
        AlarmBook book = AlarmBook.EMPTY;
        for (int minute = 370; minute < 660; minute += 10) {
            book = step(DAMP, before, book, Script.START, minute).book();
        }
        assertEquals('P', Script.letter(book.find(Script.KEY)), "with the first six hours missing");
        book = step(DAMP, inTime, book, Script.START, 660).book();
        assertEquals('U', Script.letter(book.find(Script.KEY)));
        assertEquals(Script.START, book.find(Script.KEY).orElseThrow().since());
    }

    @Test
    void hours_that_come_late_and_were_dry_take_back_a_running_on_delay() {
        AlarmBook book = step(DAMP, values("95x300 _x60 95x60"), AlarmBook.EMPTY, Script.START, 410)
                .book();
        assertEquals(Script.START, book.find(Script.KEY).orElseThrow().since());
        book = step(DAMP, values("95x300 70x60 95x60"), book, Script.START, 410).book();
        assertEquals(Script.minute(360), book.find(Script.KEY).orElseThrow().since());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "an ordinary night, 2027-05-10T20:00, 06:00",
        "the night clocks go forward, 2027-03-27T20:00, 07:00",
        "the night clocks go back, 2027-10-30T20:00, 05:00"
    })
    void delays_are_hours_that_pass_and_not_hours_on_the_clock(String name, String from, String raisedAt) {
        Instant start = LocalDateTime.parse(from).atZone(ZONE).toInstant();
        double[] damp = values("95x780");
        AlarmBook book = AlarmBook.EMPTY;
        LocalTime raised = LocalTime.MIDNIGHT;
        for (int minute = 10; minute < damp.length && raised.equals(LocalTime.MIDNIGHT); minute += 10) {
            Step step = step(DAMP, damp, book, start, minute);
            book = step.book();
            if (step.changed()) {
                raised = start.plusSeconds(60L * minute).atZone(ZONE).toLocalTime();
            }
        }
        assertEquals(LocalTime.parse(raisedAt), raised, name);
    }

    private static String play(Rule rule, double[] values, Instant start) {
        AlarmBook book = AlarmBook.EMPTY;
        StringBuilder phases = new StringBuilder();
        for (int minute = 10; minute < values.length; minute += 10) {
            book = step(rule, values, book, start, minute).book();
            if (minute % 120 == 0) {
                phases.append(Script.letter(book.find(Script.KEY)));
            }
        }
        return phases.toString();
    }

    private static Step step(Rule rule, double[] values, AlarmBook book, Instant start, int minute) {
        Instant now = start.plusSeconds(60L * minute);
        double[] known = Arrays.copyOf(values, minute);
        Verdict verdict = rule.kind() == RuleKind.BAG_HOT
                ? BagHotRule.judge(rule, TAG, Bags.warm(start, known), now)
                : BagDampRule.judge(rule, TAG, Bags.humid(start, known), now);
        return AlarmEngine.step(book, now, List.of(verdict), List.of(rule));
    }

    private static double[] values(String series) {
        return Pattern.compile(" ")
                .splitAsStream(series)
                .flatMapToDouble(part -> {
                    int times = part.indexOf('x');
                    double value = times == 1 && part.charAt(0) == '_'
                            ? Double.NaN
                            : Double.parseDouble(part.substring(0, times));
                    double[] run = new double[Integer.parseInt(part.substring(times + 1))];
                    Arrays.fill(run, value);
                    return Arrays.stream(run);
                })
                .toArray();
    }
}
