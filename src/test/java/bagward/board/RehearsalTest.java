package bagward.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.alarm.Acting;
import bagward.alarm.AlarmEvent;
import bagward.bag.Quantile;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.fault.ImpossibleValueException;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Ten days of a small station with damp nights, a silent sensor, a swap and a bag that comes off. */
class RehearsalTest {
    private static final Duration HALF_HOUR = Duration.ofMinutes(30);
    private static final double END = 240;

    private final Scenario scenario = new Scenario(20);

    RehearsalTest() {
        for (int day = 0; day < 10; day++) {
            double midnight = 24.0 * day;
            scenario.heard(Scenario.SOUTH_POST, midnight, midnight + 14, 11, 91)
                    .heard(Scenario.SOUTH_POST, midnight + 14, midnight + 24, 24, 52);
        }
        scenario.heard(Scenario.NORTH_POST, 0, 60, 14, 88)
                .heard(Scenario.NORTH_POST, 75, END, 14, 70)
                .bag("S-1", Scenario.SOUTH, Scenario.WINDOW, 1, 3.25)
                .bag("S-2", Scenario.SOUTH, Scenario.WINDOW, 2, 30)
                .bag("N-1", Scenario.NORTH, Scenario.AISLE, 1, 10)
                .change(new RegisterChange.Swap(new TagCode("N-1"), Scenario.hours(100.5), Scenario.FILM))
                .change(new RegisterChange.TakeOff(new TagCode("S-1"), Scenario.hours(150.75)));
    }

    @Test
    void it_gives_the_alarms_that_the_running_engine_gives_at_the_same_instants() {
        List<AlarmEvent> expected = SideBySide.live(scenario, END, HALF_HOUR);
        assertTrue(expected.size() > 12, "events to compare: " + expected.size());
        assertEquals(SideBySide.words(expected), SideBySide.words(SideBySide.rehearsed(scenario.at(END), HALF_HOUR)));
    }

    @Test
    void rules_act_on_the_quantile_that_they_name() {
        scenario.watch(
                Acting.on(Quantile.SURE, Scenario.DAMP),
                Acting.on(new Quantile(0.8), Scenario.HOT),
                Acting.on(Quantile.POSSIBLE, Scenario.MOULD));
        List<AlarmEvent> expected = SideBySide.live(scenario, END, HALF_HOUR);
        assertTrue(expected.size() > 4, "events to compare: " + expected.size());
        assertEquals(SideBySide.words(expected), SideBySide.words(SideBySide.rehearsed(scenario.at(END), HALF_HOUR)));
    }

    @Test
    void the_order_of_arrival_does_not_matter() {
        List<AlarmEvent> inOrder = SideBySide.rehearsed(scenario.at(END), HALF_HOUR);
        Collections.shuffle(scenario.readings(), new Random(5));
        assertEquals(SideBySide.words(inOrder), SideBySide.words(SideBySide.rehearsed(scenario.at(END), HALF_HOUR)));
    }

    @Test
    void a_rule_that_was_not_there_is_tried_without_changing_the_others() {
        BoardInputs all = scenario.at(END);
        scenario.watch(Scenario.DUE);
        List<AlarmEvent> alone = SideBySide.rehearsed(scenario.at(END), HALF_HOUR);
        assertFalse(alone.isEmpty());
        assertEquals(
                SideBySide.words(SideBySide.rehearsed(all, HALF_HOUR).stream()
                        .filter(e -> e.key().rule().equals(Scenario.DUE.id()))
                        .toList()),
                SideBySide.words(alone));
    }

    @Test
    void an_empty_stretch_and_too_fine_a_step_are_refused() {
        BoardInputs season = scenario.at(END);
        assertThrows(ImpossibleValueException.class, () -> new Rehearsal(season, season.now(), HALF_HOUR));
        assertThrows(
                ImpossibleValueException.class, () -> new Rehearsal(season, Scenario.START, Duration.ofSeconds(30)));
    }
}
