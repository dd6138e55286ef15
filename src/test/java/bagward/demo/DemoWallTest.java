package bagward.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.Priority;
import bagward.alarm.RuleKind;
import bagward.alarm.Subject;
import bagward.bag.Origin;
import bagward.bag.TagCode;
import bagward.board.AlarmView;
import bagward.board.BagView;
import bagward.board.Board;
import bagward.board.DryingView;
import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.mould.Dryness;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the whole chain makes of the demo's messages. */
class DemoWallTest {
    private static final DemoPlayback PLAYED =
            new DemoPlayback(DemoStation.SEED, DemoStation.NOW.plus(Duration.ofDays(1)));
    private static final Board MORNING = PLAYED.board(DemoStation.NOW);

    @Test
    void every_message_can_be_used_but_the_last_words_of_the_silent_sensor() {
        assertEquals(Set.of("mirrenholt/linden-c-air"), PLAYED.refused().keySet());
        assertEquals(Set.of("mirrenholt/header-house"), PLAYED.unknown().keySet());
    }

    @Test
    void the_history_is_in_once_its_last_minutes_are_stored() {
        assertTrue(DemoStation.historyIsIn(PLAYED.readings(), PLAYED.sensors()));
        DemoPlayback half = new DemoPlayback(DemoStation.SEED, DemoStation.HISTORY_BEGINS.plus(Duration.ofDays(4)));
        assertFalse(DemoStation.historyIsIn(half.readings(), half.sensors()));
    }

    @Test
    void the_history_is_not_in_while_that_of_one_sensor_is_on_its_way() {
        SensorId late = new SensorId("alder-b-air");
        ReadingSource allButOne = new ReadingSource() {
            @Override
            public List<Reading> readings(SeriesId series, Instant from, Instant to) {
                return PLAYED.readings().readings(series, from, to);
            }

            @Override
            public Optional<Reading> newest(SeriesId series, Instant atOrBefore) {
                Instant known = series.sensor().equals(late) ? atOrBefore.minus(Duration.ofHours(5)) : atOrBefore;
                return PLAYED.readings().newest(series, known);
            }
        };
        assertFalse(DemoStation.historyIsIn(allButOne, PLAYED.sensors()));
    }

    @Test
    void the_first_wall_shows_a_damp_bag_one_that_fell_shut_an_overdue_one_and_a_silent_sensor() {
        Set<String> subjects = subjects(
                MORNING,
                alarm -> alarm.rule().priority() != Priority.LOW || alarm.rule().kind() == RuleKind.BAG_DAMP);
        assertEquals(Set.of("MH-0421", "MH-0427", "MH-0401", "linden-c-air"), subjects);
    }

    @Test
    void the_bag_that_fell_shut_has_not_dried_since() {
        BagView shut = MORNING.find(new TagCode("MH-0421")).orElseThrow();
        assertTrue(shut.dampFor().compareTo(Duration.ofHours(30)) > 0, "damp for " + shut.dampFor());
        assertEquals(Optional.of(Priority.MEDIUM), shut.worst());
        assertTrue(subjects(MORNING, alarm -> alarm.rule().kind() == RuleKind.BAG_MOULD)
                .contains("MH-0421"));
        assertEquals(Set.of(), subjects(MORNING, alarm -> alarm.rule().kind() == RuleKind.BAG_DAMP));
    }

    @Test
    void beside_that_only_bags_that_come_off_today_are_listed() {
        Set<String> due = subjects(MORNING, alarm -> alarm.rule().kind() == RuleKind.BAG_DUE);
        assertEquals(Set.of("MH-0401", "MH-0402", "MH-0403"), due);
        assertEquals(Set.of(), subjects(MORNING, alarm -> alarm.rule().kind() == RuleKind.BAG_HOT));
        assertTrue(MORNING.bags().size() >= 25, "bags " + MORNING.bags().size());
    }

    @Test
    void the_seed_room_is_damp_since_the_evening_and_calls_in_the_morning() {
        DryingView room = MORNING.drying().get(0);
        assertEquals(
                List.of("Aspergillus halophilicus", "Aspergillus restrictus", "Aspergillus glaucus", "Wallemia"),
                room.fungi().stream().map(since -> since.fungus().name()).toList());
        assertTrue(room.fungi().get(0).since().isAfter(DemoStation.DRYER_TRIPS));
        Predicate<AlarmView> drying = alarm -> alarm.rule().kind() == RuleKind.DRYING_DAMP;
        assertEquals(Set.of(), subjects(MORNING, drying));
        Board later = PLAYED.board(DemoStation.NOW.plus(Duration.ofHours(6)));
        assertEquals(Set.of("house:seed-room"), subjects(later, drying));
    }

    @Test
    void the_seed_room_was_dry_while_its_dryer_ran() {
        Board noon = PLAYED.board(DemoStation.DRYER_TRIPS.minus(Duration.ofHours(5)));
        DryingView room = noon.drying().get(0);
        assertTrue(room.fungi().isEmpty());
        assertEquals(Dryness.DRY_ENOUGH, room.seed().orElseThrow().dryness());
    }

    @Test
    void two_bags_are_measured_and_the_others_estimated() {
        Map<Origin, List<TagCode>> origins = MORNING.bags().stream()
                .collect(Collectors.groupingBy(
                        b -> b.humidity().orElseThrow().origin(),
                        Collectors.mapping(b -> b.head().tag(), Collectors.toList())));
        assertEquals(
                Set.of(new TagCode("MH-0412"), new TagCode("MH-0421")),
                Set.copyOf(origins.getOrDefault(Origin.MEASURED, List.of())));
        assertEquals(
                MORNING.bags().size() - 2,
                origins.getOrDefault(Origin.ESTIMATED, List.of()).size());
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 4, 6, 8, 10, 12, 15, 18, 21, 24})
    void through_the_first_day_the_climate_asks_for_few_bags_only(int hour) {
        Board board = PLAYED.board(DemoStation.NOW.plus(Duration.ofHours(hour)));
        Set<String> troubled = subjects(
                board,
                alarm ->
                        alarm.rule().kind() == RuleKind.BAG_DAMP || alarm.rule().kind() == RuleKind.BAG_HOT);
        assertTrue(troubled.size() <= 4, () -> "bags " + troubled);
    }

    @Test
    void an_estimate_of_the_steady_bag_is_near_what_its_sensor_says_but_not_the_same() {
        BagView steady = MORNING.find(new TagCode("MH-0412")).orElseThrow();
        BagView neighbour = MORNING.find(new TagCode("MH-0413")).orElseThrow();
        double measured = steady.humidity().orElseThrow().value();
        double estimated = neighbour.humidity().orElseThrow().value();
        double apart = Math.abs(measured - estimated);
        assertTrue(apart > 0.05 && apart < 12, measured + " measured, " + estimated + " estimated");
    }

    private static Set<String> subjects(Board board, Predicate<AlarmView> which) {
        return board.alarms().stream()
                .filter(which)
                .map(alarm -> name(alarm.alarm().key().subject()))
                .collect(Collectors.toSet());
    }

    private static String name(Subject subject) {
        if (subject instanceof Subject.Bag bag) {
            return bag.tag().value();
        }
        return subject instanceof Subject.OfSensor sensor ? sensor.sensor().value() : subject.key();
    }
}
