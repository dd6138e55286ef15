package bagward.alarm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.TagCode;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AlarmLoadTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Copenhagen");

    private final List<AlarmEvent> events = new ArrayList<>();

    private void event(int minute, AlarmKey key, AlarmPhase from, AlarmPhase to, String by) {
        events.add(new AlarmEvent(Script.minute(minute), key, from, to, by, ""));
    }

    private void raised(int minute, AlarmKey key) {
        event(minute, key, AlarmPhase.PENDING, AlarmPhase.UNACKNOWLEDGED, AlarmEngine.RULE);
    }

    private AlarmLoad load() {
        return AlarmLoad.of(events, AlarmBook.EMPTY, Script.minute(5000), ZONE);
    }

    @Test
    void nothing_happened() {
        assertEquals(
                new AlarmLoad(
                        Collections.emptySortedMap(),
                        Collections.emptySortedMap(),
                        List.of(),
                        List.of(),
                        List.of(),
                        Optional.empty()),
                load());
    }

    @Test
    void alarms_count_on_the_civil_day_of_the_house() {
        raised(0, Script.KEY);
        // 23:30 in UTC is past midnight in the house.
        raised(17 * 60 + 30, Script.OTHER);
        assertEquals(Map.of(LocalDate.of(2026, 2, 3), 1, LocalDate.of(2026, 2, 4), 1), load().raisedPerDay());
    }

    @Test
    void asking_again_is_no_new_alarm() {
        raised(0, Script.KEY);
        event(5, Script.KEY, AlarmPhase.UNACKNOWLEDGED, AlarmPhase.ACKNOWLEDGED, "Mirja");
        event(1445, Script.KEY, AlarmPhase.ACKNOWLEDGED, AlarmPhase.UNACKNOWLEDGED, AlarmEngine.RULE);
        assertEquals(List.of(new AlarmLoad.Count(Script.KEY, 1)), load().mostFrequent());
    }

    @Test
    void three_times_within_six_hours_is_chattering_and_slower_is_not() {
        for (int i = 0; i < 3; i++) {
            raised(i * 180, Script.KEY);
            raised(i * 181, Script.OTHER);
        }
        assertEquals(List.of(Script.KEY), load().chattering());
    }

    @Test
    void the_median_wait_counts_what_people_confirmed_and_not_what_the_rule_ended() {
        raised(0, Script.KEY);
        event(10, Script.KEY, AlarmPhase.UNACKNOWLEDGED, AlarmPhase.ACKNOWLEDGED, "Mirja");
        raised(100, Script.OTHER);
        event(110, Script.OTHER, AlarmPhase.UNACKNOWLEDGED, AlarmPhase.RETURNED_UNACKNOWLEDGED, AlarmEngine.RULE);
        event(130, Script.OTHER, AlarmPhase.RETURNED_UNACKNOWLEDGED, AlarmPhase.NORMAL, "Mirja");
        raised(200, Script.KEY);
        event(900, Script.KEY, AlarmPhase.UNACKNOWLEDGED, AlarmPhase.NORMAL, AlarmEngine.RULE);
        assertEquals(Optional.of(Duration.ofMinutes(20)), load().timeToAcknowledge());
    }

    @Test
    void an_alarm_that_holds_for_more_than_a_day_is_standing() {
        AlarmBook book =
                new Script(Script.RULE, "####").step(AlarmBook.EMPTY, 3).book();
        assertEquals(
                List.of(), AlarmLoad.of(events, book, Script.minute(1440), ZONE).standing());
        assertEquals(
                1,
                AlarmLoad.of(events, book, Script.minute(1441), ZONE).standing().size());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void a_series_that_chatters_at_the_limit_gives_one_alarm_with_deadband_and_many_without(long seed) {
        assertEquals(1, alarmsOfADay(seed, 2, Duration.ofMinutes(15), Duration.ofMinutes(30)));
        assertTrue(alarmsOfADay(seed, 0, Duration.ZERO, Duration.ZERO) > 50, "the series must chatter");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void asked_once_an_hour_or_once_a_minute_a_chattering_series_gives_one_alarm(long seed) {
        assertEquals(1, alarms(seed, 2, Duration.ofMinutes(15), Duration.ofMinutes(30), 60));
    }

    private static int alarmsOfADay(long seed, double deadband, Duration on, Duration off) {
        return alarms(seed, deadband, on, off, 1);
    }

    /** Alarms of a bag whose humidity scatters by less than 1 %RH round a limit of 90 %RH for a day. */
    private static int alarms(long seed, double deadband, Duration on, Duration off, int everyMinutes) {
        Rule rule = new Rule(
                new RuleId("damp"), "Damp", RuleKind.BAG_DAMP, 90, deadband, on, off, Priority.LOW, Script.CARD);
        Random random = new Random(seed);
        double[] percent = random.doubles(1440, 89.01, 90.99).toArray();
        AlarmBook book = AlarmBook.EMPTY;
        int raised = 0;
        for (int i = everyMinutes; i < percent.length; i += everyMinutes) {
            Instant now = Script.minute(i);
            Verdict verdict = BagDampRule.judge(rule, new TagCode("A-1"), Bags.humid(Script.START, percent), now);
            Step step = AlarmEngine.step(book, now, List.of(verdict), List.of(rule));
            book = step.book();
            raised += (int) step.events().stream()
                    .filter(event -> event.to() == AlarmPhase.UNACKNOWLEDGED)
                    .count();
        }
        return raised;
    }
}
