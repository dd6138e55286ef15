package bagward.pollen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.Line;
import bagward.bag.MaterialId;
import bagward.bag.PollenScore;
import bagward.bag.Pollination;
import bagward.bag.PollinationKind;
import bagward.bag.Register;
import bagward.bag.RegisterChange;
import bagward.bag.RegisterRules;
import bagward.bag.TagCode;
import bagward.station.Bay;
import bagward.station.BayId;
import bagward.station.House;
import bagward.station.HouseId;
import bagward.station.Spot;
import bagward.station.Station;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ScoresTest {
    private static final Instant NINE = Instant.parse("2026-05-04T07:00:00Z");
    private static final HouseId NORTH = new HouseId("north");
    private static final Optional<Line> ROOK = Optional.of(new Line("Rook 3"));
    private static final MaterialId FILM = new MaterialId("film");

    @Test
    void a_second_score_of_the_same_time_takes_the_place_of_the_first() {
        List<TakenScore> scores =
                Scores.of(List.of(entry(ROOK, PollenScore.TRACE), entry(ROOK, PollenScore.CLEAR)), Register.EMPTY);
        assertEquals(
                List.of(PollenScore.CLEAR),
                scores.stream().map(TakenScore::score).toList());
    }

    @Test
    void scores_of_two_lines_at_one_time_are_two() {
        assertEquals(
                2,
                Scores.of(
                                List.of(entry(ROOK, PollenScore.TRACE), entry(Optional.empty(), PollenScore.NONE)),
                                Register.EMPTY)
                        .size());
    }

    @Test
    void a_withdrawn_score_does_not_count_and_may_be_entered_again() {
        PollenEntry wrong = entry(ROOK, PollenScore.PLENTIFUL);
        PollenEntry back = new PollenEntry.Withdrawn(NORTH, ROOK, NINE, "Ida");
        assertEquals(List.of(), Scores.of(List.of(wrong, back), Register.EMPTY));
        assertEquals(
                PollenScore.NONE,
                Scores.of(List.of(wrong, back, entry(ROOK, PollenScore.NONE)), Register.EMPTY)
                        .get(0)
                        .score());
    }

    @Test
    void a_pollination_brings_its_score_with_the_pollen_parent_and_one_that_was_not_scored_brings_none() {
        Register register = register(putOn("A-1", 1, Optional.of(PollenScore.NONE)), putOn("A-2", 2, Optional.empty()));
        List<TakenScore> scores = Scores.of(List.of(entry(ROOK, PollenScore.CLEAR)), register);
        assertEquals(2, scores.size());
        TakenScore taken =
                scores.stream().filter(TakenScore::withPollination).findFirst().orElseThrow();
        assertEquals(
                new TakenScore(NORTH, Optional.of(new Line("Vetch 19")), NINE, "Bo", PollenScore.NONE, true), taken);
    }

    @Test
    void scores_come_in_the_order_of_their_times_whoever_entered_them_first() {
        PollenEntry early = new PollenEntry.Scored(NORTH, ROOK, NINE.minusSeconds(60), "Ida", PollenScore.TRACE);
        List<PollenEntry> entered = List.of(entry(ROOK, PollenScore.CLEAR), early);
        List<TakenScore> scores = Scores.of(entered, Register.EMPTY);
        assertTrue(scores.get(0).at().isBefore(scores.get(1).at()));
        assertEquals(scores, Scores.of(List.of(entered.get(1), entered.get(0)), Register.EMPTY));
    }

    private static PollenEntry entry(Optional<Line> line, PollenScore score) {
        return new PollenEntry.Scored(NORTH, line, NINE, "Ida", score);
    }

    private static RegisterChange putOn(String tag, int spot, Optional<PollenScore> score) {
        return new RegisterChange.PutOn(
                new TagCode(tag),
                NINE,
                new Spot(NORTH, new BayId("a"), spot),
                FILM,
                new Line("Rook 3"),
                new Line("Vetch 19"),
                new Pollination(NINE, "Bo", PollinationKind.CROSS, 8, score));
    }

    private static Register register(RegisterChange... changes) {
        House north = new House(NORTH, "North", List.of(new Bay(new BayId("a"), "Bench", 4, 2)));
        Station station = new Station("Test", 54, 10, 0, ZoneOffset.UTC, List.of(north), List.of());
        return new RegisterRules(station, Set.of(FILM)).apply(Register.EMPTY, List.of(changes));
    }
}
