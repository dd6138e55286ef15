package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.Bagging;
import bagward.bag.Drying;
import bagward.bag.DryingStay;
import bagward.bag.Ending;
import bagward.bag.FlowerSigns;
import bagward.bag.Head;
import bagward.bag.HeadState;
import bagward.bag.Line;
import bagward.bag.MaterialId;
import bagward.bag.Packing;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.TagCode;
import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.station.BayId;
import bagward.station.HouseId;
import bagward.station.Spot;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;

/**
 * Pods ripen in one house and hang in another. Figures of the index as in the table of a week for the class "sensitive"
 * (src/test/resources/mould/index-after-a-week.csv).
 */
class LotCourseTest {
    private static final Instant OFF = Instant.parse("2031-05-01T08:20:00Z");
    private static final HouseId HOUSE = new HouseId("house");
    private static final HouseId LOFT = new HouseId("loft");
    private static final double[] DAMP = {20, 98};
    private static final double[] DRY = {20, 40};
    private static final double[] NOTHING = {Double.NaN, Double.NaN};
    private static final double WEEK_AT_20_98 = 0.4493;
    private static final double TOLERANCE = 5e-3;

    @Test
    void there_is_no_course_while_the_bag_is_on() {
        assertEquals(
                Optional.empty(), course(head(Optional.empty(), List.of(), 0), hours(-1), hour -> DAMP, hour -> DRY));
    }

    @Test
    void pods_that_ripen_in_damp_air_grow_mould_as_the_table_says() {
        LotCourse course = ripening(168, hour -> DAMP);
        assertEquals(WEEK_AT_20_98, course.state().index(), TOLERANCE);
        assertEquals(168, course.growingHours(), 1e-9);
        assertEquals(0, course.unknownHours(), 1e-9);
        assertEquals(RiskBand.LOW, course.band());
    }

    @Test
    void hours_without_data_are_counted_and_change_nothing() {
        LotCourse course = ripening(188, hour -> hour < 20 ? NOTHING : DAMP);
        assertEquals(WEEK_AT_20_98, course.state().index(), TOLERANCE);
        assertEquals(20, course.unknownHours(), 1e-9);
    }

    @Test
    void what_is_left_of_an_hour_is_not_looked_at() {
        assertEquals(
                ripening(168, hour -> DAMP).state(),
                ripeningFor(Duration.ofMinutes(168 * 60 + 59), hour -> DAMP).state());
    }

    @Test
    void the_index_of_the_drying_lot_goes_on_from_the_pods() {
        LotCourse course = lot(84, List.of(stay(LOFT, 84, 168)), 168, hour -> DAMP, hour -> DAMP);
        assertEquals(WEEK_AT_20_98, course.state().index(), TOLERANCE);
        assertEquals(course.pods().end().index() * 2, course.state().index(), 0.01, "the half of it each");
    }

    @Test
    void a_dry_loft_ends_the_growth_and_lets_the_seed_dry_for_storage() {
        LotCourse course = lot(84, List.of(stay(LOFT, 90, 258)), 258, hour -> DAMP, hour -> DRY);
        assertTrue(course.state().index() < course.state().highest());
        assertEquals(6, course.betweenHours(), 1e-9);
        assertEquals(6, course.unknownHours(), 1e-9);
        SeedStay seed = course.stays().get(0).seed().orElseThrow();
        assertEquals(Optional.of(hours(90)), seed.firstDryEnough());
        assertEquals(
                Dryness.DRY_ENOUGH, course.stays().get(0).newest().orElseThrow().dryness());
    }

    @Test
    void of_a_place_elsewhere_nothing_is_known_and_the_index_waits() {
        DryingStay elsewhere = new DryingStay(Optional.empty(), hours(84), Optional.of(hours(100)));
        LotCourse course = lot(84, List.of(elsewhere, stay(LOFT, 100, 184)), 184, hour -> DAMP, hour -> DAMP);
        assertEquals(WEEK_AT_20_98, course.state().index(), TOLERANCE);
        assertEquals(16, course.unknownHours(), 1e-9);
        assertEquals(Optional.empty(), course.stays().get(0).seed());
        assertEquals(Optional.empty(), course.stays().get(0).newest());
    }

    @Test
    void what_comes_after_now_is_not_looked_at() {
        List<DryingStay> stays = List.of(stay(LOFT, 84, 168));
        LotCourse then = course(head(Optional.of(84), stays, 168), hours(100), hour -> DAMP, hour -> DAMP)
                .orElseThrow();
        assertEquals(16, then.stays().get(0).index().knownHours(), 1e-9);
        LotCourse before = course(head(Optional.of(84), stays, 168), hours(50), hour -> DAMP, hour -> DAMP)
                .orElseThrow();
        assertEquals(50, before.pods().knownHours(), 1e-9);
        assertEquals(List.of(), before.stays());
        assertEquals(0, before.betweenHours(), 1e-9);
    }

    @Test
    void air_that_fell_silent_long_before_the_end_is_not_told_as_that_of_now() {
        LotCourse course = lot(10, List.of(stay(LOFT, 10, 60)), 60, hour -> DRY, hour -> hour < 53 ? DRY : NOTHING);
        assertEquals(Optional.empty(), course.stays().get(0).newest());
    }

    private static LotCourse ripening(int hours, DoubleFunction<double[]> air) {
        return ripeningFor(Duration.ofHours(hours), air);
    }

    private static LotCourse ripeningFor(Duration time, DoubleFunction<double[]> air) {
        return course(head(Optional.empty(), List.of(), 0), OFF.plus(time), air, hour -> NOTHING)
                .orElseThrow();
    }

    private static LotCourse lot(
            int harvest,
            List<DryingStay> stays,
            int now,
            DoubleFunction<double[]> house,
            DoubleFunction<double[]> loft) {
        return course(head(Optional.of(harvest), stays, now), hours(now), house, loft)
                .orElseThrow();
    }

    private static Optional<LotCourse> course(
            Head head, Instant now, DoubleFunction<double[]> house, DoubleFunction<double[]> loft) {
        LotAir air = (place, bay, grid) -> climate(grid, place.equals(LOFT) ? loft : house);
        return LotCourse.of(head, air, Seeds.surfaces(), Seeds.storage(), now);
    }

    /** The air of each cell by the hours from when the bag came off. */
    private static Climate climate(TimeGrid grid, DoubleFunction<double[]> air) {
        double[] celsius = new double[grid.size()];
        double[] percent = new double[grid.size()];
        for (int i = 0; i < grid.size(); i++) {
            double[] cell = air.apply(Duration.between(OFF, grid.at(i)).toMinutes() / 60.0);
            celsius[i] = cell[0];
            percent[i] = cell[1];
        }
        double[] dark = new double[grid.size()];
        Arrays.fill(dark, 0);
        return new Climate(
                RegularSeries.of(grid, celsius), RegularSeries.of(grid, percent), RegularSeries.of(grid, dark));
    }

    private static DryingStay stay(HouseId house, int from, int to) {
        return new DryingStay(Optional.of(house), hours(from), Optional.of(hours(to)));
    }

    private static Head head(Optional<Integer> harvest, List<DryingStay> stays, int packed) {
        Instant putOn = OFF.minus(Duration.ofDays(7));
        return new Head(
                new TagCode("H-1"),
                new Spot(HOUSE, new BayId("a"), 1),
                new Line("Tessel"),
                new Line("Tessel"),
                Optional.empty(),
                new Pollination(putOn, "Ida", PollinationKind.SELF, 8, Optional.empty()),
                List.of(new Bagging(new MaterialId("paper"), putOn, Optional.of(OFF))),
                FlowerSigns.NOT_NOTED,
                harvest.map(hour -> new Ending(hours(hour), HeadState.HARVESTED, "")),
                new Drying(
                        stays,
                        stays.isEmpty() ? List.of() : List.of(new Packing(hours(packed), "", Optional.empty()))));
    }

    private static Instant hours(double hours) {
        return OFF.plusSeconds(Math.round(hours * 3600));
    }
}
