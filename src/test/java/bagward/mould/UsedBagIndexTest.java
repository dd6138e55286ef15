package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.TagCode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The mould index of a bag over its uses; figures as in the table of a week (src/test/resources/mould/index-after-a-week.csv). */
class UsedBagIndexTest {
    private static final Surface PAPER = new Surface(Substrate.VERY_SENSITIVE, "test row");
    private static final double WEEK_AT_20_98 = 0.7774;
    private static final double TOLERANCE = 5e-3;

    @Test
    void a_new_bag_begins_clean() {
        UsedBag bag = UsedBag.of(PAPER, List.of(use("A", 0, damp(168))));
        assertEquals(IndexState.CLEAN, bag.before());
        assertEquals(WEEK_AT_20_98, bag.here().index().end().index(), TOLERANCE);
        assertFalse(bag.shouldBeReplaced());
    }

    @Test
    void the_index_goes_on_where_the_use_before_left_it_however_long_the_bag_lay_between() {
        UsedBag halves = UsedBag.of(PAPER, List.of(use("A", 0, damp(84)), use("B", 700, damp(84))));
        assertEquals(WEEK_AT_20_98, halves.here().index().end().index(), TOLERANCE);
        assertEquals(halves.uses().get(0).index().end(), halves.before());
    }

    @Test
    void a_bag_that_grew_mould_in_three_weeks_is_to_be_replaced_though_it_was_dried_since() {
        List<UsedBag.Stretch> uses = new ArrayList<>(List.of(use("A", 0, damp(168)), use("B", 300, damp(168))));
        uses.add(use("C", 600, Bags.everyHour().air(168, 20, 50)));
        UsedBag bag = UsedBag.of(PAPER, uses);
        assertTrue(bag.here().index().end().index() < bag.before().index(), "dry time takes something back");
        assertTrue(bag.before().highest() > 1, bag.before()::toString);
        assertEquals(RiskBand.MODERATE, bag.band());
        assertTrue(bag.shouldBeReplaced());
    }

    @Test
    void time_without_data_leaves_the_index_and_is_told() {
        UsedBag bag = UsedBag.of(
                PAPER,
                List.of(
                        use("A", 0, damp(84)),
                        use("B", 100, Bags.everyHour().gap(20).air(84, 20, 98))));
        assertEquals(WEEK_AT_20_98, bag.here().index().end().index(), TOLERANCE);
        assertEquals(20, bag.here().index().unknownHours(), 1e-9);
    }

    private static Bags damp(int hours) {
        return Bags.everyHour().air(hours, 20, 98);
    }

    private static UsedBag.Stretch use(String head, int day, Bags climate) {
        return new UsedBag.Stretch(
                new TagCode(head),
                Bags.START.plus(Duration.ofDays(day)),
                Bags.START.plus(Duration.ofDays(day + 7)),
                climate.build());
    }
}
