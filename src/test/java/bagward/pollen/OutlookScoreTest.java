package bagward.pollen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class OutlookScoreTest {
    @Test
    void a_hand_reckoned_week_is_scored() {
        // Worked by hand: squares .01 .04 .64 .04 → .73/4; bins 0.1: 1 of 1 not, 0.2: none, 0.8: 2 of 3.
        OutlookScore score =
                OutlookScore.of(new double[] {0.1, 0.8, 0.8, 0.8}, new boolean[] {false, true, false, true}, 10);
        assertEquals(0.73 / 4, score.brier(), 1e-12);
        assertEquals(0.25, score.uncertainty(), 1e-12);
        assertEquals(2, score.bins().size());
        assertEquals(2.0 / 3, score.bins().get(1).came(), 1e-12);
        assertEquals(1 - 0.73, score.skill(), 1e-12);
    }

    @Test
    void the_parts_add_up_when_all_outlooks_of_a_bin_are_equal() {
        OutlookScore score = OutlookScore.of(
                new double[] {0.1, 0.1, 0.5, 0.5, 0.9, 0.9, 0.9},
                new boolean[] {false, true, true, false, true, true, false},
                10);
        assertEquals(score.reliability() - score.resolution() + score.uncertainty(), score.brier(), 1e-12);
    }

    @Test
    void perfect_outlooks_score_nothing_and_always_saying_the_average_has_no_skill() {
        OutlookScore perfect = OutlookScore.of(new double[] {0, 1, 1}, new boolean[] {false, true, true}, 5);
        assertEquals(0, perfect.brier());
        assertEquals(1, perfect.skill());
        OutlookScore average = OutlookScore.of(new double[] {0.5, 0.5}, new boolean[] {false, true}, 5);
        assertEquals(0, average.skill(), 1e-12);
    }

    @Test
    void scoring_nothing_is_refused() {
        TooFewDataException refused =
                assertThrows(TooFewDataException.class, () -> OutlookScore.of(new double[0], new boolean[0], 10));
        assertTrue(refused.getMessage().contains("at least one"));
    }
}
