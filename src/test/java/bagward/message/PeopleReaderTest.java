package bagward.message;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.Priority;
import bagward.document.Inspection;
import bagward.document.Section;
import bagward.fault.Fault;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PeopleReaderTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    private static final Set<ChannelName> CHANNELS = Set.of(new ChannelName("ruth-mail"), new ChannelName("gateway"));

    private static final String GOOD = """
            people:
            - name: Ruth
              channels: [ruth-mail, gateway]
              quiet: "20:00-06:30"
            - name: Osei
              channels: [gateway]
              turn: second
              tell-from: high
              lists: false
            second-after: 45 min
            evening: "18:15"
            """;

    private final Inspection inspection = new Inspection();

    private MessagePlan read(String text) {
        Section top = Section.parse("test.yaml", text, inspection);
        return PeopleReader.plan(top, PeopleReader.people(top.sections("people", 0), CHANNELS));
    }

    private List<String> sentences() {
        return inspection.faults().stream().map(Fault::sentence).toList();
    }

    @Test
    void people_are_read_in_their_order_with_usual_values_for_what_is_left_out() {
        MessagePlan plan = read(GOOD);
        assertEquals(List.of(), sentences());
        Person ruth = plan.people().get(0);
        assertEquals(Person.Turn.FIRST, ruth.turn());
        assertEquals(Priority.MEDIUM, ruth.tellFrom());
        assertTrue(ruth.lists());
        Person osei = plan.people().get(1);
        assertEquals(Person.Turn.SECOND, osei.turn());
        assertEquals(List.of(new ChannelName("gateway")), osei.channels());
        assertFalse(osei.lists());
        assertEquals(Duration.ofMinutes(45), plan.secondAfter());
        assertEquals(MessagePlan.NOBODY.remindEvery(), plan.remindEvery());
        assertEquals(LocalTime.of(18, 15), plan.evening());
    }

    @Test
    void wrong_people_and_times_are_refused_each_with_its_line() {
        read(GOOD.replace("[gateway]", "[pager]")
                .replace("Osei", "Ruth")
                .replace("20:00-06:30", "at night")
                .replace("18:15", "noon"));
        assertEquals(
                List.of(
                        "test.yaml line 4, people[0].quiet: found 'at night'; must be two times of the day such as"
                                + " 20:00-06:30.",
                        "test.yaml line 5, people[1].name: found 'Ruth'; must be given to one person only.",
                        "test.yaml line 6, people[1].channels: 'pager' must be the name of one of deliveries.channels.",
                        "test.yaml line 11, evening: found 'noon'; must be a time of the day such as 06:30."),
                sentences());
    }

    @Test
    void quiet_hours_over_midnight_hold_on_the_clock_of_the_station() {
        Person ruth = read(GOOD).people().get(0);
        assertTrue(ruth.listens(Priority.MEDIUM, Instant.parse("2026-05-01T17:59:59Z"), BERLIN));
        assertFalse(ruth.listens(Priority.MEDIUM, Instant.parse("2026-05-01T18:00:00Z"), BERLIN));
        assertFalse(ruth.listens(Priority.MEDIUM, Instant.parse("2026-05-02T04:29:59Z"), BERLIN));
        assertTrue(ruth.listens(Priority.MEDIUM, Instant.parse("2026-05-02T04:30:00Z"), BERLIN));
        assertTrue(ruth.listens(Priority.HIGH, Instant.parse("2026-05-01T23:00:00Z"), BERLIN));
        assertFalse(ruth.listens(Priority.LOW, Instant.parse("2026-05-01T12:00:00Z"), BERLIN));
    }

    @Test
    void quiet_hours_end_at_the_new_time_on_the_nights_of_the_clock_change() {
        QuietHours hours = QuietHours.parse("22:00-06:00", Priority.HIGH);
        assertTrue(hours.hold(Instant.parse("2026-03-29T03:59:59Z"), BERLIN));
        assertFalse(hours.hold(Instant.parse("2026-03-29T04:00:00Z"), BERLIN));
        assertTrue(hours.hold(Instant.parse("2026-10-25T04:59:59Z"), BERLIN));
        assertFalse(hours.hold(Instant.parse("2026-10-25T05:00:00Z"), BERLIN));
    }
}
