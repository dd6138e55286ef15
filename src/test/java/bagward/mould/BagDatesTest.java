package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.Bagging;
import bagward.bag.FlowerSigns;
import bagward.bag.Head;
import bagward.bag.Line;
import bagward.bag.MaterialId;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.TagCode;
import bagward.station.BayId;
import bagward.station.HouseId;
import bagward.station.Spot;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BagDatesTest {
    private static final Instant DAY_0 = Instant.parse("2031-04-02T06:00:00Z");
    private static final Duration WEEK = Duration.ofDays(7);
    private static final Crop.BagTimes TIMES =
            new Crop.BagTimes(WEEK, Duration.ofDays(1), Duration.ofDays(2), Duration.ofDays(5), "test");

    private static Instant day(double days) {
        return DAY_0.plusSeconds(Math.round(days * 86_400));
    }

    private static Bagging bagging(double from, Optional<Instant> to) {
        return new Bagging(new MaterialId("paper"), day(from), to);
    }

    private static Head head(Bagging... baggings) {
        return head(FlowerSigns.NOT_NOTED, baggings);
    }

    private static Head head(FlowerSigns signs, Bagging... baggings) {
        return new Head(
                new TagCode("A-1"),
                new Spot(new HouseId("h"), new BayId("b"), 1),
                new Line("Aspen"),
                new Line("Birch"),
                Optional.empty(),
                new Pollination(DAY_0, "Ida", PollinationKind.CROSS, 8, Optional.empty()),
                List.of(baggings),
                signs,
                Optional.empty());
    }

    private static BagDates dates(Head head, double atDay, Duration material) {
        return BagDates.of(head, day(atDay), material, TIMES, ZoneOffset.UTC).orElseThrow();
    }

    @Test
    void a_bag_is_due_after_seven_days_and_then_more_overdue_each_day() {
        BagDates dates = dates(head(bagging(0, Optional.empty())), 1, WEEK);
        assertEquals(day(7), dates.due());
        assertEquals(BagStage.STAYS_ON, dates.stageAt(day(6.9)));
        assertEquals(BagStage.DUE, dates.stageAt(day(7)));
        assertEquals(BagStage.DUE, dates.stageAt(day(7.9)));
        assertEquals(BagStage.OVERDUE, dates.stageAt(day(8)));
        assertEquals(3, dates.overdueSteps(day(10.5)));
    }

    @ParameterizedTest
    @CsvSource({
        // put on,               due: the morning of the seventh day, house time
        "2026-02-03T07:30:00Z, 2026-02-10T05:00:00Z",
        "2026-02-03T22:30:00Z, 2026-02-10T05:00:00Z",
        // after midnight in the house
        "2026-02-03T23:30:00Z, 2026-02-11T05:00:00Z",
        // over the night on which the clocks go forward
        "2026-03-26T10:00:00Z, 2026-04-02T04:00:00Z"
    })
    void it_is_due_on_the_morning_of_its_day_whatever_the_hour_it_was_put_on(Instant putOn, Instant due) {
        Head head = head(new Bagging(new MaterialId("paper"), putOn, Optional.empty()));
        BagDates dates = BagDates.of(head, putOn, WEEK, TIMES, ZoneId.of("Europe/Copenhagen"))
                .orElseThrow();
        assertEquals(due, dates.due());
    }

    @Test
    void the_shorter_time_of_material_and_crop_counts() {
        Head head = head(bagging(0, Optional.empty()));
        assertEquals(day(5), dates(head, 1, Duration.ofDays(5)).due());
        assertEquals(day(7), dates(head, 1, Duration.ofDays(12)).due());
    }

    @Test
    void a_swap_does_not_start_the_time_anew_but_a_new_bag_does() {
        Head swapped = head(bagging(0, Optional.of(day(3))), bagging(3, Optional.empty()));
        assertEquals(day(7), dates(swapped, 4, WEEK).due());
        Head anew = head(bagging(0, Optional.of(day(2))), bagging(3, Optional.empty()));
        assertEquals(day(10), dates(anew, 4, WEEK).due());
    }

    @Test
    void dropped_petals_let_it_come_off_early_but_never_within_two_days() {
        FlowerSigns dropped = new FlowerSigns(Optional.empty(), Optional.of(day(1)));
        assertEquals(day(2), seen(dropped).earliest());
        FlowerSigns opened = new FlowerSigns(Optional.of(day(0.5)), Optional.empty());
        assertEquals(day(5.5), seen(opened).earliest());
        assertEquals(BagStage.MAY_COME_OFF, seen(opened).stageAt(day(6)));
        FlowerSigns both = new FlowerSigns(Optional.of(day(0.5)), Optional.of(day(4)));
        assertEquals(day(4), seen(both).earliest());
    }

    private static BagDates seen(FlowerSigns signs) {
        return dates(head(signs, bagging(0, Optional.empty())), 1, WEEK);
    }

    @Test
    void a_bare_head_has_no_dates() {
        Head head = head(bagging(0, Optional.of(day(3))));
        assertTrue(BagDates.of(head, day(4), WEEK, TIMES, ZoneOffset.UTC).isEmpty());
    }
}
