package bagward.mould;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.BagClimate;
import bagward.bag.Banded;
import bagward.bag.JoinedClimates;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MouldCourseTest {
    private static final List<Organism> FLOWERS = List.of(Rows.BOTRYTIS_ON_FLOWERS);
    private static final double NEEDED_AT_15 = 1.9939; // Magarey and others 2005, equation 1

    @Test
    void a_swap_in_the_middle_of_a_wet_spell_does_not_wash_it_away() {
        BagClimate first = Bags.everyMinute().air(1, 15, 97).build();
        BagClimate second = later(Bags.everyMinute().air(1.5, 15, 97).build(), Duration.ofHours(1));
        assertEquals(
                RiskBand.MODERATE, MouldCourse.of(second, FLOWERS).assessment().band());
        MouldCourse whole = MouldCourse.of(JoinedClimates.of(List.of(first, second)), FLOWERS);
        assertEquals(RiskBand.HIGH, whole.assessment().band());
        assertEquals(hours(NEEDED_AT_15), whole.high().orElseThrow().at(), "to the minute");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void the_past_is_the_same_whatever_comes_after_it(long seed) {
        List<Organism> organisms = Seeds.organisms();
        BagClimate whole = randomWeek(new Random(seed)).build();
        MouldCourse all = MouldCourse.of(whole, organisms);
        for (int cells = 200; cells < whole.grid().size(); cells += 611) {
            BagClimate before = part(whole, cells);
            MouldCourse then = MouldCourse.of(before, organisms);
            Instant now = before.grid().end();
            assertEquals(all.bandAt(now), then.assessment().band(), () -> "at " + now);
            Optional<Reach> high = all.high().filter(reach -> !reach.at().isAfter(now));
            assertEquals(high, then.high());
            BagClimate outlook =
                    later(Bags.everyHour().air(12, 14, 97).build(), Duration.between(Bags.START, hour(now)));
            assertEquals(all.ahead(outlook), then.ahead(outlook), () -> "outlook of " + hour(now));
        }
    }

    @Test
    void an_outlook_carries_the_open_spell_on() {
        MouldCourse course =
                MouldCourse.of(Bags.everyMinute().air(4, 20, 70).air(1, 15, 97).build(), FLOWERS);
        BagClimate night = later(Bags.everyHour().air(3, 15, 97).build(), Duration.ofHours(5));
        Reach high = course.ahead(night).high().orElseThrow();
        assertEquals(hours(6), high.at(), "one hour was wet before, two are needed; in quarters of an hour");
        assertEquals("wet 2.0 h at 15 °C, Botrytis on flowers needs 2.0 h", high.reason());
    }

    @Test
    void a_dry_break_in_the_outlook_ends_the_open_spell_and_a_dry_outlook_brings_nothing() {
        MouldCourse course = MouldCourse.of(Bags.everyMinute().air(1.5, 15, 97).build(), FLOWERS);
        Duration from = Duration.ofMinutes(90);
        BagClimate broken = later(Bags.everyHour().air(4, 20, 60).air(3, 15, 97).build(), from);
        assertEquals(hours(7.5), course.ahead(broken).high().orElseThrow().at());
        BagClimate shortBreak =
                later(Bags.everyHour().air(3, 20, 60).air(3, 15, 97).build(), from);
        assertEquals(hours(5), course.ahead(shortBreak).high().orElseThrow().at());
        BagClimate dry = later(Bags.everyHour().air(10, 20, 60).build(), from);
        assertTrue(course.ahead(dry).high().isEmpty());
    }

    @Test
    void what_was_reached_before_is_not_announced_again() {
        MouldCourse course = MouldCourse.of(Bags.everyMinute().air(3, 15, 97).build(), FLOWERS);
        BagClimate night = later(Bags.everyHour().air(6, 15, 97).build(), Duration.ofHours(3));
        assertEquals(
                Optional.empty(),
                course.ahead(night).nextAbove(course.assessment().band()));
    }

    private static Bags randomWeek(Random random) {
        Bags bags = Bags.everyMinute();
        for (int hour = 0; hour < 168; hour++) {
            double percent = Math.min(100, (hour % 24 < 12 ? 92 : 70) + 6 * random.nextGaussian());
            double celsius = 14 + 3 * random.nextGaussian();
            int minutes = 13 + random.nextInt(47);
            bags.air(minutes / 60.0, celsius, percent);
            if (random.nextInt(40) == 0) {
                bags.gap(random.nextInt(300) / 60.0);
            }
        }
        return bags;
    }

    private static Instant hour(Instant now) {
        return now.truncatedTo(java.time.temporal.ChronoUnit.HOURS);
    }

    private static Instant hours(double hours) {
        return Bags.START.plusSeconds((long) Math.ceil(hours * 60) * 60);
    }

    private static BagClimate later(BagClimate climate, Duration by) {
        TimeGrid grid = climate.grid();
        TimeGrid moved = new TimeGrid(grid.start().plus(by), grid.step(), grid.size());
        return on(moved, climate, grid.size());
    }

    private static BagClimate part(BagClimate climate, int cells) {
        TimeGrid grid = climate.grid();
        return on(new TimeGrid(grid.start(), grid.step(), cells), climate, cells);
    }

    private static BagClimate on(TimeGrid grid, BagClimate climate, int cells) {
        return new BagClimate(
                on(grid, climate.temperature(), cells),
                on(grid, climate.humidity(), cells),
                new BitSet(),
                climate.film());
    }

    private static Banded on(TimeGrid grid, Banded banded, int cells) {
        return new Banded(
                on(grid, banded.middle(), cells), on(grid, banded.low(), cells), on(grid, banded.high(), cells));
    }

    private static RegularSeries on(TimeGrid grid, RegularSeries series, int cells) {
        return RegularSeries.of(grid, java.util.Arrays.copyOf(series.toArray(), cells));
    }
}
