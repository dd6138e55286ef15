package bagward.message;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.AlarmPhase;
import bagward.alarm.Rule;
import bagward.board.AlarmView;
import bagward.board.Board;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Who is told what and when, half hour by half hour from six in the evening. */
class BundlingComposerTest {
    private static final Instant EVENING =
            LocalDateTime.of(2027, 5, 11, 18, 0).atZone(Stage.ZONE).toInstant();
    private static final Map<Told.News, Character> LETTERS =
            Map.of(Told.News.RAISED, 'r', Told.News.REMINDED, 'm', Told.News.SECOND_TURN, 's', Told.News.RETURNED, 'o');

    private final Composer composer = new BundlingComposer();
    private final Person ruth = Stage.person("Ruth", Person.Turn.FIRST, Optional.empty());

    /**
     * The alarm: . none, U unacknowledged, A acknowledged, R returned unacknowledged. What a person is told: r raised,
     * m reminded, s second turn, o over. Ruth comes first and has no quiet hours but in the rows that say so; Osei comes
     * second. Reminders after 2 h, the second turn after 1 h.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        high is told at once, and once                | high   | never       | .UAAAA               | .r                   | .
        high unseen: second after 1 h, again after 2 h| high   | never       | UUUUUUUUUUUUUUUUUUUU | r...m...m...m        | ..s...m...m...m
        seen by anybody in time: nobody else hears    | high   | never       | UUAAAA               | r                    | .
        medium waits for company, then is told        | medium | never       | UUUU                 | .r                   | ...s
        medium is not told again by itself            | medium | never       | UUUUUUUUUUUUUUUU     | .r                   | ...s
        low waits for the lists                       | low    | never       | UUUUUUUUUU           | .                    | .
        high breaks quiet hours                       | high   | 18:30-06:00 | ..UAAA               | ..r                  | .
        medium waits until quiet hours are over       | medium | 18:30-20:30 | ..UUUU               | .....r               | ....s
        over by now is told to whom it was told       | medium | never       | UURRR                | .r.o                 | .
        over before anybody was told is not told      | medium | never       | URRRR                | .                    | .
        raised again after being acknowledged         | high   | never       | UAA.UUU              | r...r                | ......s
        what is gone from the list is told no more    | high   | never       | U......              | r                    | .
        """)
    void every_alarm_is_told_in_time_and_each_state_once(
            String name, String priority, String quiet, String phases, String toRuth, String toOsei) {
        Optional<String> hours = Optional.of(quiet).filter(text -> !text.equals("never"));
        Person first = Stage.person("Ruth", Person.Turn.FIRST, hours);
        MessagePlan plan = Stage.plan(first, Stage.person("Osei", Person.Turn.SECOND, Optional.empty()));
        Played played = play(plan, rule(priority), phases);
        assertEquals(padded(toRuth, phases), played.of("Ruth"), name + ": Ruth");
        assertEquals(padded(toOsei, phases), played.of("Osei"), name + ": Osei");
    }

    @Test
    void where_nobody_of_the_first_turn_can_be_told_the_second_is_told_in_time() {
        Person asleep = Stage.person("Ruth", Person.Turn.FIRST, Optional.of("17:00-07:00"));
        MessagePlan plan = Stage.plan(asleep, Stage.person("Osei", Person.Turn.SECOND, Optional.empty()));
        assertEquals("..s...", play(plan, Stage.MEDIUM, "UUUUUU").of("Osei"));
    }

    @Test
    void an_alarm_that_comes_and_goes_is_told_once_an_hour_at_most() {
        Sent sent = Sent.NOTHING;
        List<Integer> minutes = new ArrayList<>();
        for (int minute = 0; minute < 180; minute++) {
            Instant now = EVENING.plusSeconds(60L * minute);
            Instant raised = EVENING.plusSeconds(600L * (minute / 10)).minusSeconds(1);
            AlarmView alarm = Stage.alarm(Stage.HIGH, 0, AlarmPhase.UNACKNOWLEDGED, raised, now);
            List<Message> made =
                    composer.compose(Stage.board(now, List.of(alarm)), Stage.NO_POLLEN, Stage.plan(ruth), sent);
            made.forEach(message ->
                    minutes.add((int) Duration.between(EVENING, message.at()).toMinutes()));
            sent = sent.with(made);
        }
        assertEquals(List.of(0, 60, 120), minutes);
    }

    @Test
    void ten_bags_of_one_bay_are_one_message_with_ten_bags() {
        List<Message> messages = compose(Stage.plan(ruth), storm(Stage.HIGH, 10, EVENING), EVENING.plusSeconds(2));
        assertEquals(1, messages.size());
        Message message = messages.get(0);
        assertEquals("Act now: Bag does not dry: 10 bags in Alder house, Long bench", message.subject());
        assertEquals(10, message.tells().size());
        assertEquals(
                10, message.text().lines().filter(l -> l.startsWith("- spot")).count());
        assertTrue(message.text().contains("- spot 1, H-0: damp 20.1 h: 96 %RH now, limit 90 %RH, estimated"));
        assertTrue(message.text().contains("Do: Swap the bag\nCaution: Mouldy bags are not shaken\nHow soon: Now"));
    }

    @Test
    void a_house_that_calls_for_its_bags_names_all_of_them_in_one_message() {
        AlarmView house = Stage.ofHouse(Stage.HIGH, "alder", 3, EVENING);
        List<Message> messages = compose(Stage.plan(ruth), List.of(house), EVENING.plusSeconds(2));
        assertEquals(1, messages.size());
        assertEquals(
                "Act now: Bag does not dry: 3 bags in Alder house",
                messages.get(0).subject());
        assertTrue(
                messages.get(0).text().contains("estimated\n  H-0, H-1, H-2\n"),
                messages.get(0).text());
        assertEquals(1, messages.get(0).tells().size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"high", "medium"})
    void a_storm_of_500_bags_is_one_message_at_once_that_a_phone_can_show(String priority) {
        List<Message> messages = compose(Stage.plan(ruth), storm(rule(priority), 500, EVENING), EVENING);
        assertEquals(1, messages.size());
        Message message = messages.get(0);
        assertEquals(500, message.tells().size());
        assertTrue(message.subject().endsWith("500 bags in 4 places"), message.subject());
        assertTrue(message.text().contains("and 460 more, on the page Alarms."), message.text());
        assertTrue(
                message.text().length() < 5000, "characters: " + message.text().length());
    }

    @Test
    void alarms_of_many_rules_at_once_are_one_message_to_a_person() {
        List<AlarmView> alarms = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            Rule rule = new Rule(
                    new bagward.alarm.RuleId("rule-" + i),
                    "Rule " + i,
                    Stage.HIGH.kind(),
                    90,
                    2,
                    Duration.ZERO,
                    Duration.ZERO,
                    Stage.HIGH.priority(),
                    Stage.HIGH.card());
            alarms.addAll(storm(rule, 100, EVENING));
        }
        List<Message> messages = compose(Stage.plan(ruth), alarms, EVENING);
        assertEquals(1, messages.size());
        assertTrue(
                messages.get(0).subject().startsWith("500 alarms of 5 kinds: Rule 0"),
                messages.get(0).subject());
    }

    @Test
    void a_storm_that_comes_bag_by_bag_for_forty_minutes_is_a_handful_of_messages() {
        MessagePlan plan = Stage.plan(ruth);
        Sent sent = Sent.NOTHING;
        int messages = 0;
        for (int second = 0; second <= 7200; second += 5) {
            Instant now = EVENING.plusSeconds(second);
            List<AlarmView> alarms = IntStream.rangeClosed(0, Math.min(499, second / 5))
                    .mapToObj(i ->
                            Stage.alarm(Stage.MEDIUM, i, AlarmPhase.UNACKNOWLEDGED, EVENING.plusSeconds(5L * i), now))
                    .toList();
            List<Message> made = composer.compose(Stage.board(now, alarms), Stage.NO_POLLEN, plan, sent);
            messages += made.size();
            sent = sent.with(made);
        }
        assertEquals(500, sent.told().size());
        assertTrue(messages <= 3, "messages: " + messages);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void what_was_put_is_never_composed_again_whatever_happens(long seed) {
        Random random = new Random(seed);
        MessagePlan plan = Stage.plan(
                ruth, Stage.person("Osei", Person.Turn.SECOND, Optional.of("22:00-05:00")), Stage.reader("Mirja"));
        AlarmPhase[] phases = {
            AlarmPhase.UNACKNOWLEDGED,
            AlarmPhase.UNACKNOWLEDGED,
            AlarmPhase.ACKNOWLEDGED,
            AlarmPhase.RETURNED_UNACKNOWLEDGED
        };
        Sent sent = Sent.NOTHING;
        Set<String> ids = new HashSet<>();
        for (int step = 0; step < 400; step++) {
            Instant now = EVENING.plus(Duration.ofMinutes(7L * step));
            List<AlarmView> alarms = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                Rule rule = List.of(Stage.HIGH, Stage.MEDIUM, Stage.LOW).get(i % 3);
                if (random.nextInt(4) > 0) {
                    Instant raised = EVENING.plus(Duration.ofMinutes(7L * (step - step % (20 + i))));
                    alarms.add(Stage.alarm(rule, i, phases[random.nextInt(4)], raised, now));
                }
            }
            Board board = Stage.board(now, alarms);
            List<Message> made = composer.compose(board, Stage.NO_POLLEN, plan, sent);
            assertEquals(made, composer.compose(board, Stage.NO_POLLEN, plan, sent), "a function of its arguments");
            for (Message message : made) {
                assertTrue(ids.add(message.id()), "told twice: " + message);
            }
            sent = sent.with(made);
            assertEquals(List.of(), composer.compose(board, Stage.NO_POLLEN, plan, sent));
        }
        assertFalse(ids.size() < 20, "the script must have told something: " + ids.size());
    }

    private List<Message> compose(MessagePlan plan, List<AlarmView> alarms, Instant now) {
        return composer.compose(Stage.board(now, alarms), Stage.NO_POLLEN, plan, Sent.NOTHING);
    }

    private static List<AlarmView> storm(Rule rule, int bags, Instant raised) {
        return IntStream.range(0, bags)
                .mapToObj(i -> Stage.alarm(rule, i, AlarmPhase.UNACKNOWLEDGED, raised, raised))
                .toList();
    }

    private Played play(MessagePlan plan, Rule rule, String phases) {
        Played played = new Played(new ArrayList<>());
        Sent sent = Sent.NOTHING;
        Instant raised = EVENING;
        Instant over = EVENING;
        for (int i = 0; i < phases.length(); i++) {
            // A second past the half hour: high waits so long for company.
            Instant now = EVENING.plus(Duration.ofMinutes(30L * i)).plusSeconds(1);
            char phase = phases.charAt(i);
            if (phase == 'U' && (i == 0 || phases.charAt(i - 1) != 'U')) {
                raised = now.minusSeconds(1);
            }
            if (phase == 'R' && phases.charAt(i - 1) != 'R') {
                over = now.minusSeconds(1);
            }
            List<AlarmView> alarms =
                    phase == '.' ? List.of() : List.of(Stage.alarm(rule, 0, phase(phase), raised, over));
            List<Message> made = composer.compose(Stage.board(now, alarms), Stage.NO_POLLEN, plan, sent);
            played.steps.add(made);
            sent = sent.with(made);
        }
        return played;
    }

    private static Rule rule(String priority) {
        return switch (priority) {
            case "high" -> Stage.HIGH;
            case "medium" -> Stage.MEDIUM;
            default -> Stage.LOW;
        };
    }

    private static AlarmPhase phase(char letter) {
        return switch (letter) {
            case 'U' -> AlarmPhase.UNACKNOWLEDGED;
            case 'A' -> AlarmPhase.ACKNOWLEDGED;
            default -> AlarmPhase.RETURNED_UNACKNOWLEDGED;
        };
    }

    private static String padded(String told, String phases) {
        return told + ".".repeat(Math.max(0, phases.length() - told.length()));
    }

    private record Played(List<List<Message>> steps) {
        String of(String person) {
            StringBuilder letters = new StringBuilder();
            for (List<Message> made : steps) {
                letters.append(made.stream()
                        .filter(message -> message.person().equals(person))
                        .map(message -> LETTERS.get(message.tells().get(0).news()))
                        .findFirst()
                        .orElse('.'));
            }
            return letters.toString();
        }
    }
}
