package bagward.site.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.Ending;
import bagward.bag.FlowerSigns;
import bagward.bag.Head;
import bagward.bag.HeadState;
import bagward.bag.Line;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.TagCode;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.station.BayId;
import bagward.station.HouseId;
import bagward.station.Spot;
import bagward.watch.HouseDays;
import bagward.watch.Seasons;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WarmthTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Dublin");
    private static final Instant POLLINATED = Instant.parse("2031-04-11T09:00:00Z");

    @Test
    void degree_days_are_summed_over_whole_days_since_the_day_after_the_pollination() {
        Fact fact = Warmth.of(head(Optional.empty()), house(12), LocalDate.of(2031, 4, 22), ZONE)
                .orElseThrow();
        assertTrue(
                fact.value().startsWith("70 °C d above 5 °C, 120 °C d above 0 °C, from means of 10 days of the house;"),
                fact.value());
    }

    @Test
    void days_without_data_are_told_and_nothing_is_counted_for_them() {
        Fact fact = Warmth.of(head(Optional.empty()), house(Double.NaN), LocalDate.of(2031, 4, 22), ZONE)
                .orElseThrow();
        assertTrue(fact.value().contains("0 °C d above 5 °C"), fact.value());
        assertTrue(fact.value().contains("; 10 days without data are not counted"), fact.value());
    }

    @Test
    void it_ends_with_the_head_and_begins_with_its_first_whole_day() {
        Ending ending = new Ending(Instant.parse("2031-04-15T12:00:00Z"), HeadState.HARVESTED, "");
        Fact fact = Warmth.of(head(Optional.of(ending)), house(12), LocalDate.of(2031, 6, 1), ZONE)
                .orElseThrow();
        assertTrue(fact.value().startsWith("21 °C d above 5 °C"), fact.value());
        assertEquals(Optional.empty(), Warmth.of(head(Optional.empty()), house(12), LocalDate.of(2031, 4, 12), ZONE));
    }

    private static Head head(Optional<Ending> ending) {
        return new Head(
                new TagCode("A-1"),
                new Spot(new HouseId("h"), new BayId("b"), 1),
                new Line("Aspen"),
                new Line("Birch"),
                Optional.empty(),
                new Pollination(POLLINATED, "Ida", PollinationKind.CROSS, 8, Optional.empty()),
                List.of(),
                FlowerSigns.NOT_NOTED,
                ending);
    }

    private static Seasons house(double celsius) {
        return new Seasons() {
            @Override
            public HouseDays of(HouseId house, LocalDate from, LocalDate to) {
                TimeGrid grid = HouseDays.grid(from, to);
                double[] values = new double[grid.size()];
                java.util.Arrays.fill(values, celsius);
                RegularSeries series = RegularSeries.of(grid, values);
                HouseDays.Range range = new HouseDays.Range(series, series, series, series);
                return new HouseDays(from, range, range, range);
            }

            @Override
            public Instant keptSince() {
                return Instant.MIN;
            }
        };
    }
}
