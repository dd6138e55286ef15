package bagward.site.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.FlowerSigns;
import bagward.mould.Ahead;
import bagward.mould.BagDates;
import bagward.mould.HarvestDays;
import bagward.mould.HeadCare;
import bagward.mould.HeatAssessment;
import bagward.mould.HeatBand;
import bagward.mould.PollinationNote;
import bagward.mould.Reach;
import bagward.mould.RiskBand;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CareFactsTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Dublin");
    private static final Instant NOON = Instant.parse("2031-04-11T11:00:00Z");
    private static final Instant DUE = Instant.parse("2031-04-16T05:00:00Z");
    private static final HeatAssessment COOL =
            new HeatAssessment(HeatBand.NONE, HeatBand.NONE, Optional.empty(), "up to 21.0 °C", 0);

    @Test
    void a_night_that_brings_a_higher_band_says_which_when_and_why() {
        Reach reach = new Reach(RiskBand.HIGH, NOON.plus(Duration.ofHours(14)), "Botrytis", "wet 16.0 h at 12 °C");
        Ahead ahead = new Ahead(NOON, NOON.plus(Duration.ofHours(18)), Optional.empty(), Optional.of(reach));
        assertEquals(
                "If it goes as the outlook says, high estimated risk about 02:00: wet 16.0 h at 12 °C. Swap the bag or take"
                        + " it off before.",
                fact("Mould tonight", care(COOL, Optional.of(ahead)), RiskBand.MODERATE));
    }

    @Test
    void a_night_that_brings_nothing_is_no_promise_and_one_after_high_changes_nothing() {
        Ahead ahead = new Ahead(NOON, NOON.plus(Duration.ofHours(18)), Optional.empty(), Optional.empty());
        assertEquals(
                "No higher band expected until 06:00 if it goes as the outlook says. Look all the same.",
                fact("Mould tonight", care(COOL, Optional.of(ahead)), RiskBand.LOW));
        assertEquals(
                "High already; what comes tonight changes no band.",
                fact("Mould tonight", care(COOL, Optional.of(ahead)), RiskBand.HIGH));
    }

    @Test
    void without_an_outlook_nothing_is_said_of_tonight() {
        assertTrue(CareFacts.of(care(COOL, Optional.empty()), FlowerSigns.NOT_NOTED, RiskBand.NONE, NOON, ZONE).stream()
                .noneMatch(fact -> fact.name().equals("Mould tonight")));
    }

    @Test
    void heat_is_told_with_its_reason_and_the_days_since() {
        HeatAssessment hot = new HeatAssessment(
                HeatBand.NONE,
                HeatBand.POLLEN_LOSS,
                Optional.of(NOON.minus(Duration.ofHours(36))),
                "up to 34.2 °C, above 30 °C for 4.0 h at a stretch",
                0);
        assertEquals(
                "So hot that pollen was likely lost: up to 34.2 °C, above 30 °C for 4.0 h at a stretch; last heat 1.5 days"
                        + " ago, about a week to recover",
                fact("Heat in the bag", care(hot, Optional.empty()), RiskBand.NONE));
        assertEquals(
                "Not warm so far: up to 21.0 °C", fact("Heat in the bag", care(COOL, Optional.empty()), RiskBand.NONE));
    }

    @Test
    void the_lines_follow_the_bag_from_staying_on_to_overdue() {
        HeadCare care = care(COOL, Optional.empty());
        assertTrue(stage(care, NOON).startsWith("Stays on"), stage(care, NOON));
        assertEquals(
                "May come off if there is a reason, by what was seen of its flowers; look first. Safety of an early removal is not"
                        + " promised.",
                stage(care, DUE.minus(Duration.ofHours(20))));
        assertEquals("Its time is over.", stage(care, DUE.plus(Duration.ofHours(23))));
        assertEquals("Overdue by 2 steps of 24 h.", stage(care, DUE.plus(Duration.ofHours(50))));
    }

    @Test
    void an_earlier_day_is_stated_once_something_was_seen_of_the_flowers() {
        FlowerSigns dropped = new FlowerSigns(Optional.empty(), Optional.of(NOON));
        List<Fact> facts = CareFacts.of(care(COOL, Optional.empty()), dropped, RiskBand.NONE, NOON, ZONE);
        assertTrue(
                facts.stream()
                        .anyMatch(fact -> fact.value()
                                .startsWith("Stays on. By what was seen of its flowers it may come off from "
                                        + Words.dayAndClock(DUE.minus(Duration.ofDays(1)), ZONE))),
                facts::toString);
    }

    @Test
    void notes_for_the_seed_lot_and_the_days_of_ripe_pods_are_told() {
        assertEquals(
                "Wet for 3.0 h in the first day",
                fact("For the seed lot", care(COOL, Optional.empty()), RiskBand.NONE));
        assertEquals(
                "About 30 May to 6 Jun by the days of the crop; for information, look at the pods.",
                fact("Pods ripe", care(COOL, Optional.empty()), RiskBand.NONE));
    }

    private static String stage(HeadCare care, Instant now) {
        return CareFacts.of(care, FlowerSigns.NOT_NOTED, RiskBand.NONE, now, ZONE).stream()
                .filter(fact -> fact.name().equals("Time in the bag"))
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static String fact(String name, HeadCare care, RiskBand now) {
        return CareFacts.of(care, FlowerSigns.NOT_NOTED, now, NOON, ZONE).stream()
                .filter(fact -> fact.name().equals(name))
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static HeadCare care(HeatAssessment heat, Optional<Ahead> ahead) {
        return new HeadCare(
                new BagDates(DUE, DUE.minus(Duration.ofDays(1)), Duration.ofDays(1)),
                heat,
                List.of(new PollinationNote(PollinationNote.Kind.SEED_SET, 3, 0, "wet for 3.0 h in the first day")),
                new HarvestDays(LocalDate.of(2031, 5, 30), LocalDate.of(2031, 6, 6)),
                ahead);
    }
}
