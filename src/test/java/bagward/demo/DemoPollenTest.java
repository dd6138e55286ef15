package bagward.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bagward.bag.PollenScore;
import bagward.bag.Register;
import bagward.climate.Climate;
import bagward.climate.Sky;
import bagward.mould.HeatLimits;
import bagward.pollen.BlockBootstrap;
import bagward.pollen.FittedRelation;
import bagward.pollen.HouseDay;
import bagward.pollen.HouseSeason;
import bagward.pollen.PollenReport;
import bagward.pollen.Predictor;
import bagward.pollen.Relation;
import bagward.pollen.ScorePoint;
import bagward.pollen.Scores;
import bagward.pollen.TakenScore;
import bagward.station.HouseId;
import bagward.station.PlaceClimates;
import bagward.station.Station;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the pollen page makes of the demo's messages and scores. */
class DemoPollenTest {
    private static final HeatLimits HEAT = new HeatLimits(27, 30, Duration.ofHours(3), 33, "invented");

    private static final DemoPlayback PLAYED = new DemoPlayback(DemoStation.SEED, DemoStation.NOW);
    private static final List<TakenScore> SCORES = Scores.of(DemoPollen.scores(DemoStation.SEED), Register.EMPTY);

    @Test
    void the_same_seed_gives_the_same_scores_and_another_seed_others() {
        assertEquals(SCORES, Scores.of(DemoPollen.scores(DemoStation.SEED), Register.EMPTY));
        assertNotEquals(SCORES, Scores.of(DemoPollen.scores(DemoStation.SEED + 1), Register.EMPTY));
    }

    @Test
    void every_score_occurs_and_none_lies_in_the_future() {
        assertEquals(
                Set.of(PollenScore.values()),
                SCORES.stream().map(TakenScore::score).collect(Collectors.toSet()));
        assertTrue(SCORES.stream().noneMatch(s -> s.at().isAfter(DemoStation.NOW)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"linden", "alder"})
    void both_houses_have_a_page_full_of_days_and_a_relation_of_their_own(String house) {
        PollenReport report = report(new HouseId(house));
        assertEquals(40, report.days().size(), "thirty days and the nine and a bit of the story");
        assertTrue(report.season().transmission().learnt());
        FittedRelation fitted = assertInstanceOf(FittedRelation.class, report.relation());
        assertTrue(fitted.days() >= 24, "days " + fitted.days());
        assertTrue(fitted.fit().coefficients().get(0) > 0, "more light went with more pollen");
        assertTrue(report.today().isPresent());
        assertTrue(report.past().learnt() > 5, "learnt " + report.past().learnt());
    }

    @Test
    void the_sky_of_the_season_was_of_all_kinds() {
        Set<Sky> skies = report(new HouseId("linden")).days().stream()
                .flatMap(day -> day.sky().stream())
                .collect(Collectors.toSet());
        assertEquals(Set.of(Sky.values()), skies);
    }

    private static PollenReport report(HouseId house) {
        Station station = new DemoDocuments().station();
        LocalDate today = DemoStation.NOW.atZone(DemoStation.ZONE).toLocalDate();
        List<HouseDay> days = new ArrayList<>();
        LocalDate first = DemoSeason.BEGINS.atZone(DemoStation.ZONE).toLocalDate();
        for (LocalDate day = first; !day.isAfter(today); day = day.plusDays(1)) {
            Climate climate = PlaceClimates.climate(
                    station, house, Optional.empty(), PLAYED.readings(), HouseDay.grid(day, DemoStation.ZONE));
            days.add(new HouseDay(DemoStation.SITE, day, DemoStation.ZONE, climate, new BitSet()));
        }
        return PollenReport.of(
                DemoStation.NOW,
                DemoStation.SITE,
                HouseSeason.of(house, DemoStation.ZONE, days, today, HEAT),
                SCORES,
                Optional.empty(),
                Predictor.LIGHT_TO_SCORE,
                (rows, predictor) ->
                        Relation.of(ScorePoint.of(rows, predictor), predictor, new BlockBootstrap(99, 0.95, 1)));
    }
}
