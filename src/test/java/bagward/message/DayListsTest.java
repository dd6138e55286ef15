package bagward.message;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.AlarmPhase;
import bagward.board.AlarmView;
import bagward.board.BagView;
import bagward.mould.RiskBand;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The list of the day and the list of the night. */
class DayListsTest {
    private final Composer composer = new BundlingComposer();
    private final MessagePlan plan = Stage.plan(Stage.reader("Mirja"));

    private static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(Stage.ZONE).toInstant();
    }

    private List<Message> compose(String local, List<BagView> bags, List<AlarmView> alarms, Sent sent) {
        return composer.compose(Stage.board(at(local), bags, alarms), Stage.NO_POLLEN, plan, sent);
    }

    private static BagView due(int number, String day, boolean wet, RiskBand band) {
        Instant due = at(day + "T06:00");
        return Stage.bag(number, due.minus(Duration.ofDays(7)), due, wet, band);
    }

    @Test
    void the_morning_list_says_what_the_day_asks_for() {
        List<BagView> bags = List.of(
                due(0, "2027-05-11", false, RiskBand.LOW),
                due(1, "2027-05-09", true, RiskBand.LOW),
                due(2, "2027-05-17", false, RiskBand.MODERATE),
                due(3, "2027-05-15", false, RiskBand.NONE));
        Message list =
                compose("2027-05-11T06:30", bags, List.of(), Sent.NOTHING).get(0);
        assertEquals("Today at Lyngbakke, Tuesday 11 May", list.subject());
        assertEquals("""
            Due to come off (2):
            - Alder house, Long bench, spot 1, H-0: today
            - Alder house, Long bench, spot 2, H-1: 2 days late

            Look after one day, whether a squeezed bud hangs (1):
            - Alder house, Long bench, spot 3, H-2: put on yesterday by Ada

            Damp or wet now (1):
            - Alder house, Long bench, spot 2, H-1: damp for 3 h, water on the film likely

            Estimated mould risk moderate or high (1):
            - Alder house, Long bench, spot 3, H-2: wet 9.2 h at 14 °C, needed 10.5 h

            """ + ListWords.BAG_CAUTION + "4 bags are on.\n", list.text());
    }

    @Test
    void the_morning_list_says_what_pollen_is_to_be_expected_in_each_house_that_has_a_report() {
        Instant beforeSunrise = at("2027-05-11T04:00");
        List<BagView> bags = List.of(due(0, "2027-05-15", false, RiskBand.LOW));
        MessagePlan early = new MessagePlan(
                plan.people(), LocalTime.of(4, 0), plan.evening(), plan.remindEvery(), plan.secondAfter());

        String text = composer.compose(
                        Stage.board(beforeSunrise, bags, List.of()),
                        Stage.darkSoFar(beforeSunrise, "birch"),
                        early,
                        Sent.NOTHING)
                .get(0)
                .text();

        assertTrue(text.contains("pollen, under the darker to the clear course of the sky:\n- Birch house: "), text);
        assertTrue(text.matches("(?s).*: \\d+ to \\d+ % at 10:00, [^\n]*\\(prior\\)\n\n1 bag is on.\n"), text);
    }

    @Test
    void a_house_whose_light_is_missing_says_so_in_the_list() {
        Instant now = at("2027-05-11T06:30");
        List<BagView> bags = List.of(due(0, "2027-05-15", false, RiskBand.LOW));

        String text = composer.compose(
                        Stage.board(now, bags, List.of()), Stage.darkSoFar(now, "alder"), plan, Sent.NOTHING)
                .get(0)
                .text();

        assertTrue(text.contains("- Alder house: no outlook, light is missing\n"), text);
    }

    @Test
    void a_calm_morning_is_said_to_be_calm_and_promises_nothing() {
        List<BagView> bags = List.of(due(0, "2027-05-15", false, RiskBand.LOW));
        String text = compose("2027-05-11T06:30", bags, List.of(), Sent.NOTHING)
                .get(0)
                .text();
        assertEquals("Nothing calls today. Have a look on your round all the same.\n\n1 bag is on.\n", text);
    }

    @Test
    void a_station_without_bags_gets_no_list_and_a_calm_evening_none_either() {
        assertEquals(List.of(), compose("2027-05-11T06:30", List.of(), List.of(), Sent.NOTHING));
        List<BagView> bags = List.of(due(0, "2027-05-15", false, RiskBand.LOW));
        assertEquals(List.of(), compose("2027-05-11T17:30", bags, List.of(), Sent.NOTHING));
    }

    @Test
    void the_evening_list_names_bags_that_should_be_off() {
        List<BagView> bags = List.of(due(0, "2027-05-09", false, RiskBand.LOW));
        Message list =
                compose("2027-05-11T17:30", bags, List.of(), Sent.NOTHING).get(0);
        assertEquals("Tonight at Lyngbakke, Tuesday 11 May", list.subject());
        assertTrue(list.text()
                .startsWith("Overdue and still on (1):\n- Alder house, Long bench, spot 1, H-0: due 2027-05-09"));
    }

    @Test
    void low_alarms_that_nobody_saw_stand_in_the_list_with_what_to_do_and_are_told_by_it() {
        Instant raised = at("2027-05-11T03:00");
        List<AlarmView> alarms = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            alarms.add(Stage.alarm(Stage.LOW, i, AlarmPhase.UNACKNOWLEDGED, raised, raised));
        }
        alarms.add(Stage.alarm(Stage.DUE, 0, AlarmPhase.UNACKNOWLEDGED, raised, raised));
        Message list = compose(
                        "2027-05-11T06:30", List.of(due(0, "2027-05-11", false, RiskBand.LOW)), alarms, Sent.NOTHING)
                .get(0);
        assertTrue(
                list.text().startsWith("Bag damp for long, not seen by anybody: 3 bags in Alder house, Long bench."),
                list.text());
        assertTrue(list.text().contains("Do: Swap the bag\nCaution: Mouldy bags are not shaken\n"), list.text());
        assertFalse(list.text().contains("Bag due, not seen"), "due bags have their own section");
        assertEquals(4, list.tells().size());
    }

    @Test
    void what_the_list_tells_is_not_told_a_second_time_beside_it() {
        Instant raised = at("2027-05-11T03:00");
        List<AlarmView> alarms = List.of(Stage.alarm(Stage.MEDIUM, 0, AlarmPhase.UNACKNOWLEDGED, raised, raised));
        assertEquals(
                1, compose("2027-05-11T06:30", List.of(), alarms, Sent.NOTHING).size());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "an ordinary day, 2027-05-11, 24",
        "the night clocks go forward, 2027-03-28, 23",
        "the night clocks go back, 2027-10-31, 25"
    })
    void each_list_comes_once_a_civil_day_at_its_time(String name, String day, int hours) {
        Instant from = LocalDate.parse(day).atStartOfDay(Stage.ZONE).toInstant();
        List<BagView> bags = List.of(due(0, LocalDate.parse(day).minusDays(3).toString(), true, RiskBand.LOW));
        Sent sent = Sent.NOTHING;
        List<String> lists = new ArrayList<>();
        for (int minute = 0; minute < hours * 60; minute += 10) {
            Instant now = from.plus(Duration.ofMinutes(minute));
            List<Message> made = composer.compose(Stage.board(now, bags, List.of()), Stage.NO_POLLEN, plan, sent);
            made.forEach(message -> lists.add(
                    message.subject().split(" ", 2)[0] + now.atZone(Stage.ZONE).toLocalTime()));
            sent = sent.with(made);
        }
        assertEquals(List.of("Today06:30", "Tonight17:30"), lists);
    }

    @ParameterizedTest(name = "a list at 02:30 {0}")
    @CsvSource({
        "that the clocks leave out comes at three, 2027-03-28, 03:30",
        "that comes twice comes once, 2027-10-31, 02:30"
    })
    void a_list_in_the_hour_of_a_clock_change_comes_once(String name, String day, String expected) {
        MessagePlan night = new MessagePlan(
                List.of(Stage.reader("Mirja")),
                java.time.LocalTime.of(2, 30),
                java.time.LocalTime.of(17, 30),
                Duration.ofHours(2),
                Duration.ofHours(1));
        Instant from = LocalDate.parse(day).atStartOfDay(Stage.ZONE).toInstant();
        List<BagView> bags = List.of(due(0, day, true, RiskBand.LOW));
        Sent sent = Sent.NOTHING;
        List<String> times = new ArrayList<>();
        for (int minute = 0; minute < 6 * 60; minute += 10) {
            Instant now = from.plus(Duration.ofMinutes(minute));
            List<Message> made = composer.compose(Stage.board(now, bags, List.of()), Stage.NO_POLLEN, night, sent);
            made.forEach(
                    message -> times.add(now.atZone(Stage.ZONE).toLocalTime().toString()));
            sent = sent.with(made);
        }
        assertEquals(List.of(expected), times);
    }

    @Test
    void a_program_that_was_off_in_the_morning_sends_the_list_late_but_not_in_the_afternoon() {
        List<BagView> bags = List.of(due(0, "2027-05-11", false, RiskBand.LOW));
        assertEquals(
                1, compose("2027-05-11T10:20", bags, List.of(), Sent.NOTHING).size());
        assertEquals(
                0, compose("2027-05-11T10:30", bags, List.of(), Sent.NOTHING).size());
    }
}
