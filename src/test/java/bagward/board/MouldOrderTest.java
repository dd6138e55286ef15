package bagward.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import bagward.bag.Head;
import bagward.bag.RegisterChange;
import bagward.bag.TagCode;
import bagward.climate.Reading;
import bagward.mould.MouldReport;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The mould report of a head is a function of what was measured and done, not of when Bagward heard of it. */
class MouldOrderTest {
    private static final TagCode TAG = new TagCode("S-1");
    private static final int END = 120;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void readings_in_any_order_and_some_twice_give_the_same_report(long seed) {
        Scenario scenario = swap(bag(house(seed)));
        List<Reading> mixed = new ArrayList<>(scenario.readings());
        mixed.addAll(scenario.readings().subList(200, 500));
        Collections.shuffle(mixed, new Random(seed));

        MouldReport inTime = report(scenario, scenario.readings());

        assertFalse(inTime.spells().isEmpty());
        assertEquals(inTime, report(scenario, mixed));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void readings_that_come_a_day_late_change_the_past_as_if_they_had_come_in_time(long seed) {
        Scenario scenario = swap(bag(house(seed)));
        List<Reading> known = new ArrayList<>();
        List<Reading> late = new ArrayList<>();
        for (Reading reading : scenario.readings()) {
            boolean held = reading.measuredAt().isAfter(Scenario.hours(30))
                    && reading.measuredAt().isBefore(Scenario.hours(96));
            (held ? late : known).add(reading);
        }
        MouldReport before = report(scenario, known);
        known.addAll(late);

        assertNotEquals(before, report(scenario, known));
        assertEquals(report(scenario, scenario.readings()), report(scenario, known));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void a_bag_that_is_entered_after_its_swap_gives_the_same_report(long seed) {
        Scenario inTime = swap(bag(house(seed)));
        Scenario late = bag(swap(house(seed)));

        assertEquals(report(inTime, inTime.readings()), report(late, late.readings()));
    }

    private static Scenario bag(Scenario scenario) {
        return scenario.bag(TAG.value(), Scenario.SOUTH, Scenario.WINDOW, 1, 6);
    }

    private static Scenario swap(Scenario scenario) {
        return scenario.change(new RegisterChange.Swap(TAG, Scenario.hours(50.5), Scenario.FILM));
    }

    /** A house whose air changes every few hours, with gaps. */
    private static Scenario house(long seed) {
        Random random = new Random(seed);
        Scenario scenario = new Scenario(20);
        double hour = 0;
        while (hour < END) {
            double until = Math.min(END, hour + 1 + 6 * random.nextDouble());
            scenario.heard(
                    Scenario.SOUTH_POST, hour, until, 10 + 9 * random.nextDouble(), 80 + 19 * random.nextDouble());
            hour = until + (random.nextInt(5) == 0 ? 1.5 : 0);
        }
        return scenario;
    }

    private static MouldReport report(Scenario scenario, List<Reading> inThisOrder) {
        BoardInputs in = scenario.at(END, inThisOrder, Scenario.materials());
        Head head = in.register().find(TAG).orElseThrow();
        return BoardBuilder.mould(in, head, head.baggings().get(1));
    }
}
