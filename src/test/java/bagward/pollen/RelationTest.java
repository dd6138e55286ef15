package bagward.pollen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.PollenScore;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

class RelationTest {
    private static final BlockBootstrap QUICK = new BlockBootstrap(199, 0.95, 1);
    private static final double SLOPE = 1.2;
    private static final double EVEN = 2.5;

    @Test
    void too_few_days_are_refused_and_the_missing_ones_counted() {
        List<ScoreRow> rows = rows(11, 3);
        Relation relation = relation(rows, Predictor.LIGHT_TO_SCORE);
        Relation.NotYet notYet = assertInstanceOf(Relation.NotYet.class, relation);
        assertEquals(11, notYet.days());
        assertEquals("4 more scored days are needed, of 15", notYet.missing());
    }

    @Test
    void days_without_clear_pollen_are_needed_as_well_as_days_with_it() {
        HouseSeason season = SimulatedHouse.season(20, 4);
        List<TakenScore> plenty = SimulatedHouse.scores(season, 0, 0, 1).stream()
                .map(s -> new TakenScore(s.house(), s.line(), s.at(), s.by(), PollenScore.PLENTIFUL, false))
                .toList();
        Relation relation = relation(ScoreRow.join(plenty, season), Predictor.LIGHT_TO_SCORE);
        assertEquals(
                "3 more with a trace or none needed, of 3",
                assertInstanceOf(Relation.NotYet.class, relation).missing());
    }

    @Test
    void a_known_relation_is_found_again_from_the_readings_of_seasons() {
        HouseSeason season = SimulatedHouse.season(120, 1);
        List<FittedRelation> fits = new ArrayList<>();
        for (long seed = 1; seed <= 12; seed++) {
            fits.add(fitted(ScoreRow.join(SimulatedHouse.scores(season, SLOPE, EVEN, seed), season)));
        }
        double mean = mean(fits, f -> f.fit().coefficients().get(0));
        assertEquals(SLOPE, mean, 0.15, "one season has a standard error of some 0.2, twelve of 0.06");
        for (double moles : new double[] {1.5, 2.5, 3.5}) {
            double logOdds = mean(fits, f -> Logistic.logOdds(f.at(moles).probability()));
            assertEquals(SLOPE * (moles - EVEN), logOdds, 0.25, moles + " mol");
        }
        assertTrue(mean(fits, f -> f.rank().coefficient()) > 0.25);
    }

    private static double mean(List<FittedRelation> fits, ToDoubleFunction<FittedRelation> value) {
        return fits.stream().mapToDouble(value).average().orElseThrow();
    }

    @Test
    void scores_that_do_not_follow_the_light_leave_the_sign_open() {
        HouseSeason season = SimulatedHouse.season(60, 9);
        List<ScoreRow> rows = ScoreRow.join(SimulatedHouse.scores(season, 0, 0, 9), season);
        assertTrue(fitted(rows).uncertainSign());
    }

    @Test
    void the_order_in_which_scores_were_entered_does_not_matter() {
        List<ScoreRow> rows = new ArrayList<>(rows(30, 5));
        Relation before = relation(rows, Predictor.LIGHT_TO_SCORE);
        Collections.shuffle(rows, new Random(6));
        assertEquals(before, relation(rows, Predictor.LIGHT_TO_SCORE));
    }

    @Test
    void scoring_one_day_many_times_makes_it_no_more_days() {
        List<ScoreRow> rows = rows(30, 5);
        List<ScoreRow> often = new ArrayList<>(rows);
        for (int i = 0; i < 9; i++) {
            often.add(rows.get(4));
        }
        FittedRelation once = fitted(rows);
        FittedRelation again = fitted(often);
        assertEquals(30, again.days());
        assertEquals(39, again.scores());
        assertEquals(
                once.fit().coefficients().get(0), again.fit().coefficients().get(0), 1e-9);
        assertEquals(once.rank(), again.rank());
    }

    @Test
    void a_day_with_missing_light_is_missing_and_the_others_stand() {
        HouseSeason season = SimulatedHouse.season(30, 5);
        List<HouseDay> holed = new ArrayList<>(season.days());
        double[] light = SimulatedHouse.light(holed.get(7).day());
        for (int cell = 8 * 12; cell < 9 * 12; cell++) {
            light[cell] = Double.NaN;
        }
        holed.set(7, SimulatedHouse.day(holed.get(7).day(), light, 18));
        HouseSeason withHole =
                new HouseSeason(SimulatedHouse.HOUSE, SimulatedHouse.ZONE, holed, season.transmission(), season.heat());
        List<ScoreRow> rows = ScoreRow.join(SimulatedHouse.scores(season, SLOPE, EVEN, 5), withHole);
        assertEquals(30, rows.size());
        assertEquals(29, relation(rows, Predictor.LIGHT_TO_SCORE).days());
        assertEquals(28, relation(rows, Predictor.LIGHT_DAY_BEFORE).days(), "the first day has none before it");
        assertEquals(30, ScorePoint.of(rows, Predictor.MORNING_DEFICIT).size());
    }

    @Test
    void a_predictor_that_never_changed_is_refused_in_words() {
        Relation relation = relation(rows(30, 5), Predictor.MORNING_HUMIDITY);
        assertTrue(assertInstanceOf(Relation.NotYet.class, relation).missing().contains("never changes"));
    }

    private static List<ScoreRow> rows(int days, long seed) {
        HouseSeason season = SimulatedHouse.season(days, seed);
        return ScoreRow.join(SimulatedHouse.scores(season, SLOPE, EVEN, seed), season);
    }

    private static Relation relation(List<ScoreRow> rows, Predictor predictor) {
        return Relation.of(ScorePoint.of(rows, predictor), predictor, QUICK);
    }

    private static FittedRelation fitted(List<ScoreRow> rows) {
        return assertInstanceOf(FittedRelation.class, relation(rows, Predictor.LIGHT_TO_SCORE));
    }
}
