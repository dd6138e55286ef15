package bagward.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmEngine;
import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Step;
import bagward.alarm.Subject;
import bagward.alarm.Verdict;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.mould.Dryness;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A room in which seed hangs for ten days: dry, damp for a day and a half, silent for some hours, dry again. */
class DryingPlaceTest {
    private static final Duration HALF_HOUR = Duration.ofMinutes(30);
    private static final double END = 240;
    private static final Comparator<AlarmEvent> ORDER =
            Comparator.comparing(AlarmEvent::at).thenComparing(AlarmEvent::key).thenComparing(AlarmEvent::to);

    private final Scenario scenario = new Scenario(20)
            .withSeedRoom()
            .hangs("V-1", 0)
            .heard(Scenario.SOUTH_POST, 0, END, 14, 70)
            .heard(Scenario.NORTH_POST, 0, END, 14, 70)
            .heard(Scenario.SEED_POST, 0, 60, 22, 45)
            .heard(Scenario.SEED_POST, 60, 96, 19, 76)
            .heard(Scenario.SEED_POST, 96, 100, 19, 68)
            .heard(Scenario.SEED_POST, 100, 130, 22, 50)
            .heard(Scenario.SEED_POST, 136, 150, 19, 74)
            .heard(Scenario.SEED_POST, 150, END, 22, 44);

    DryingPlaceTest() {
        scenario.watch(Scenario.DRYING, Scenario.SILENT);
    }

    private DryingView seen(double hour) {
        return BoardBuilder.assess(scenario.at(hour), AlarmBook.EMPTY).drying().get(0);
    }

    @Test
    void dry_air_is_dry_enough_for_seed_and_lets_nothing_grow() {
        DryingView room = seen(50);
        assertEquals(45, room.humidity().orElseThrow().value(), 1e-9);
        assertEquals(Dryness.DRY_ENOUGH, room.seed().orElseThrow().dryness());
        assertTrue(room.fungi().isEmpty());
        assertEquals(1, room.hanging());
    }

    @Test
    void damp_air_names_each_fungus_and_since_when_it_could_grow() {
        List<DryingView.FungusSince> fungi = seen(80).fungi();
        assertEquals(6, fungi.size());
        assertEquals("Aspergillus halophilicus", fungi.get(0).fungus().name());
        assertTrue(fungi.stream().allMatch(f -> f.since().equals(Scenario.hours(60)) && !f.orLonger()));
    }

    @Test
    void falling_humidity_ends_what_needs_more_and_leaves_what_needs_less() {
        assertEquals(
                List.of("Aspergillus halophilicus"),
                seen(98).fungi().stream().map(f -> f.fungus().name()).toList());
        assertEquals(Scenario.hours(60), seen(98).fungi().get(0).since());
    }

    @Test
    void growth_that_began_before_the_look_back_is_told_as_at_least_so_long() {
        Scenario damp = new Scenario(4).withSeedRoom().heard(Scenario.SEED_POST, 0, END, 19, 66);
        DryingView.FungusSince fungus = BoardBuilder.assess(damp.at(200), AlarmBook.EMPTY)
                .drying()
                .get(0)
                .fungi()
                .get(0);
        assertTrue(fungus.orLonger());
        assertEquals(Scenario.hours(32), fungus.since());
    }

    @Test
    void of_air_that_was_not_heard_for_long_nothing_is_said() {
        DryingView room = seen(133);
        assertTrue(room.seed().isEmpty());
        assertTrue(room.fungi().isEmpty());
        assertEquals(Scenario.hours(130).minusSeconds(300), room.newestReading().orElseThrow());
    }

    @Test
    void the_rule_calls_after_its_delay_once_and_says_the_numbers() {
        List<AlarmEvent> raised = live().stream()
                .filter(event ->
                        event.key().rule().equals(Scenario.DRYING.id()) && event.to() == AlarmPhase.UNACKNOWLEDGED)
                .toList();
        assertEquals(
                List.of(Scenario.hours(72), Scenario.hours(148)),
                raised.stream().map(AlarmEvent::at).toList());
        assertEquals(new Subject.InHouse(Scenario.SEEDS), raised.get(0).key().subject());
        assertEquals(
                "too damp for drying seed for 12 h: 76 %RH now, limit 70 %RH, measured",
                raised.get(0).message());
    }

    @Test
    void damp_air_calls_nobody_once_the_last_lot_is_packed() {
        scenario.change(new RegisterChange.Pack(new TagCode("V-1"), Scenario.hours(66), "", Optional.empty()));

        assertTrue(live().stream()
                .noneMatch(event ->
                        event.key().rule().equals(Scenario.DRYING.id()) && event.to() == AlarmPhase.UNACKNOWLEDGED));
        assertEquals(words(live()), words(rehearsed()));
    }

    @Test
    void a_silent_sensor_has_an_alarm_of_its_own_and_suppresses_this_one() {
        Verdict verdict = BoardBuilder.assess(scenario.at(134), AlarmBook.EMPTY).verdicts().stream()
                .filter(v -> v.key().rule().equals(Scenario.DRYING.id()))
                .findFirst()
                .orElseThrow();
        assertEquals(Verdict.Outcome.SUPPRESSED, verdict.outcome());
        assertTrue(verdict.message().contains("sensor seed-post is silent"), verdict.message());
    }

    @Test
    void a_rehearsal_gives_the_alarms_of_the_running_engine_word_for_word() {
        List<AlarmEvent> expected = live();
        assertTrue(expected.size() >= 6, "events to compare: " + expected.size());
        assertEquals(words(expected), words(rehearsed()));
    }

    @Test
    void the_order_of_arrival_does_not_matter() {
        List<String> inOrder = words(rehearsed());
        DryingView before = seen(80);
        Collections.shuffle(scenario.readings(), new Random(11));
        assertEquals(inOrder, words(rehearsed()));
        assertEquals(before, seen(80));
    }

    @Test
    void a_drying_place_is_no_house_of_the_bench_plan() {
        Board board = BoardBuilder.board(
                scenario.at(50), BoardBuilder.assess(scenario.at(50), AlarmBook.EMPTY), AlarmBook.EMPTY);
        assertEquals(2, board.houses().size());
        assertEquals(3, board.places().size());
        assertFalse(board.houses().stream().anyMatch(view -> view.house().isForDrying()));
        assertEquals("Seed room", PlaceNames.house(board, Scenario.SEEDS));
    }

    private List<AlarmEvent> rehearsed() {
        Rehearsal rehearsal = new Rehearsal(scenario.at(END), Scenario.START, HALF_HOUR);
        List<AlarmEvent> events = new ArrayList<>(rehearsal.sensorEvents());
        events.addAll(rehearsal.dryingEvents());
        return events;
    }

    private List<AlarmEvent> live() {
        List<AlarmEvent> events = new ArrayList<>();
        AlarmBook book = AlarmBook.EMPTY;
        for (double hour = 0; hour <= END; hour += 0.5) {
            BoardInputs in = scenario.at(hour);
            Instant now = in.now();
            Step step =
                    AlarmEngine.step(book, now, BoardBuilder.assess(in, book).verdicts(), in.rules());
            events.addAll(step.events());
            book = step.book();
        }
        return events;
    }

    private static List<String> words(List<AlarmEvent> events) {
        return events.stream().sorted(ORDER).map(Object::toString).toList();
    }
}
