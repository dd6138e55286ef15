package bagward.site.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DeletedReadingsTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Dublin");
    private static final Instant PUT_ON = Instant.parse("2031-04-11T09:00:00Z");
    private static final Instant OFF = Instant.parse("2031-04-18T09:00:00Z");

    @Test
    void a_head_whose_bag_was_put_on_before_the_oldest_reading_that_is_kept_says_so() {
        Fact fact = DeletedReadings.of(head(), Instant.parse("2031-04-13T23:00:00Z"), ZONE)
                .orElseThrow();
        assertEquals(
                "those before Mon 14 Apr 00:00 were deleted as configured; of them only daily and ten-minute summaries are left",
                fact.value());
    }

    @Test
    void nothing_is_said_where_every_reading_is_kept_or_there_was_no_bag() {
        assertEquals(Optional.empty(), DeletedReadings.of(head(), PUT_ON, ZONE));
        assertEquals(Optional.empty(), DeletedReadings.of(head(), Instant.MIN, ZONE));
        assertEquals(Optional.empty(), DeletedReadings.of(head(List.of()), OFF, ZONE));
    }

    private static Head head() {
        return head(List.of(new Bagging(new MaterialId("film"), PUT_ON, Optional.of(OFF))));
    }

    private static Head head(List<Bagging> baggings) {
        return new Head(
                new TagCode("A-1"),
                new Spot(new HouseId("h"), new BayId("b"), 1),
                new Line("Aspen"),
                new Line("Birch"),
                Optional.empty(),
                new Pollination(PUT_ON, "Ida", PollinationKind.CROSS, 8, Optional.empty()),
                baggings,
                FlowerSigns.NOT_NOTED,
                Optional.empty());
    }
}
