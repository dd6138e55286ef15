package bagward.alarm.seasons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** A few seasons of the study whose table stands in mould.md. */
class MouldSeasonsTest {
    private static List<MouldSeason> seasons = List.of();

    @BeforeAll
    static void play() {
        seasons = MouldSeasons.seasons(60_000, 4);
    }

    @ParameterizedTest
    @EnumSource(MouldWorld.class)
    void some_heads_mould_and_most_do_not(MouldWorld world) {
        Tally tally = Tally.of(new CalendarCaller(1), world, seasons);
        assertEquals(4 * 18, tally.bags());
        assertTrue(tally.mouldy() >= 2 && tally.mouldy() <= 30, tally.mouldy() + " of " + tally.bags());
    }

    @Test
    void who_knows_the_air_in_each_bag_beats_the_calendar() {
        for (MouldWorld world : MouldWorld.values()) {
            Tally knowing = Tally.of(MouldSeasons.best(MouldSeasons.doses(world), world, seasons, 1e9), world, seasons);
            for (CalendarCaller day : MouldSeasons.days()) {
                Tally calendar = Tally.of(day, world, seasons);
                assertTrue(knowing.balance() > calendar.balance(), () -> knowing.line() + calendar.line());
            }
        }
    }

    @ParameterizedTest
    @EnumSource(MouldWorld.class)
    void the_rule_as_shipped_calls_with_more_reason_than_the_calendar_and_not_for_every_other_bag(MouldWorld world) {
        Tally own = Tally.of(MouldSeasons.own().get(0), world, seasons);
        for (CalendarCaller day : MouldSeasons.days()) {
            Tally calendar = Tally.of(day, world, seasons);
            assertTrue(own.balance() > calendar.balance(), () -> own.line() + calendar.line());
        }
        assertTrue(own.falsePerHundredWeeks() < 50, own::line);
    }

    /** Computed apart from the equation: q = 20/35, factor (3.56 q^0.99 (1 - q))^0.71 and the logistic of wet hours. */
    @ParameterizedTest
    @CsvSource({"4, 0.2292", "8, 0.3809", "12, 0.5518", "24, 0.8540"})
    void the_chance_of_infection_is_the_published_one(double wetHours, double chance) {
        assertEquals(chance, ChanceMould.published(wetHours, 20), 5e-5);
    }

    @ParameterizedTest
    @CsvSource({"10, 30.55", "15, 17.56", "19.5, 13.80", "20, 13.85", "25, 19.42", "30, 34.27"})
    void the_wet_hours_that_an_infection_takes_are_those_of_the_parabola(double celsius, double hours) {
        assertEquals(hours, DoseMould.neededHours(celsius), 0.01);
    }

    @Test
    void all_rules_together_call_no_later_than_each_of_them() {
        List<Caller> own = MouldSeasons.own();
        Caller all = own.get(own.size() - 1);
        List<Caller> rules =
                own.stream().filter(caller -> caller.name().contains("rule ")).toList();
        assertEquals(4, rules.size());
        for (MouldSeason season : seasons) {
            for (SeasonBag bag : season.bags()) {
                Instant first = all.firstCall(season, bag).orElse(Instant.MAX);
                assertTrue(rules.stream()
                        .flatMap(rule -> rule.firstCall(season, bag).stream())
                        .noneMatch(call -> call.isBefore(first)));
            }
        }
    }
}
