package bagward.pollen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PastOutlooksTest {
    private static final HouseSeason SEASON = SimulatedHouse.season(60, 3);

    @Test
    void the_first_days_rest_on_the_prior_and_the_later_ones_on_the_scores_before_them() {
        List<PastOutlooks.Said> said = past(2, 2.5, SEASON).said();
        assertEquals(60, said.size());
        assertTrue(said.stream().limit(Relation.LEAST_DAYS).allMatch(s -> s.basis() == Chance.Basis.PRIOR));
        assertEquals(Chance.Basis.LEARNT, said.get(59).basis());
    }

    @Test
    void outlooks_on_scores_that_follow_the_light_beat_the_average_and_others_do_not() {
        OutlookScore followed = past(3, 2.5, SEASON).score().orElseThrow();
        OutlookScore chance = past(0, 2.5, SEASON).score().orElseThrow();
        assertTrue(followed.skill() > 0.2, "skill " + followed.skill());
        assertTrue(chance.skill() < 0.1, "skill " + chance.skill());
    }

    @Test
    void what_came_later_changes_no_outlook_of_before() {
        List<ScoreRow> rows = rows(2, 2.5, SEASON);
        List<PastOutlooks.Said> all = PastOutlooks.of(rows, SEASON).said();
        List<PastOutlooks.Said> early =
                PastOutlooks.of(rows.subList(0, 40), SEASON).said();
        assertEquals(early, all.subList(0, 40));
    }

    @Test
    void a_day_without_its_light_is_left_out() {
        List<HouseDay> days = new ArrayList<>(SEASON.days());
        LocalDate day = days.get(20).day();
        days.set(20, HouseDay.unknown(SimulatedHouse.SITE, day, SimulatedHouse.ZONE));
        HouseSeason holed = new HouseSeason(SEASON.house(), SEASON.zone(), days, SEASON.transmission(), SEASON.heat());
        assertEquals(
                59, PastOutlooks.of(rows(2, 2.5, SEASON, holed), holed).said().size());
    }

    @Test
    void without_scores_there_is_nothing_to_judge() {
        assertTrue(PastOutlooks.of(List.of(), SEASON).score().isEmpty());
    }

    private static PastOutlooks past(double slope, double even, HouseSeason season) {
        return PastOutlooks.of(rows(slope, even, season), season);
    }

    private static List<ScoreRow> rows(double slope, double even, HouseSeason season) {
        return rows(slope, even, season, season);
    }

    private static List<ScoreRow> rows(double slope, double even, HouseSeason truth, HouseSeason known) {
        return ScoreRow.join(SimulatedHouse.scores(truth, slope, even, 7), known);
    }
}
