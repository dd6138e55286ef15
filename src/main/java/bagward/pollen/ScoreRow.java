package bagward.pollen;

import bagward.climate.Sky;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A score joined to the light and climate of its day.
 *
 * @param score the score
 * @param day its civil day
 * @param values the predictors that are wholly known
 * @param sky of the day
 * @param spoilt whether the day before was so hot that the pollen may be spoilt
 */
public record ScoreRow(
        TakenScore score, LocalDate day, Map<Predictor, Double> values, Optional<Sky> sky, boolean spoilt) {
    /** Copies the map. */
    public ScoreRow {
        values = Map.copyOf(values);
    }

    /** Joins the scores of a house to its days, in the order of the scores; those of other houses are left out. */
    public static List<ScoreRow> join(List<TakenScore> scores, HouseSeason season) {
        List<ScoreRow> rows = new ArrayList<>();
        for (TakenScore score : scores) {
            LocalDate day = score.at().atZone(season.zone()).toLocalDate();
            if (score.house().equals(season.house()) && season.find(day).isPresent()) {
                rows.add(join(score, day, season));
            }
        }
        return List.copyOf(rows);
    }

    private static ScoreRow join(TakenScore score, LocalDate day, HouseSeason season) {
        Map<Predictor, Double> values = new EnumMap<>(Predictor.class);
        for (Predictor predictor : Predictor.values()) {
            predictor.of(score, season).ifPresent(value -> values.put(predictor, value));
        }
        boolean spoilt = season.find(day.minusDays(1))
                .map(before -> season.summary(before).spoilsNextMorning())
                .orElse(false);
        return new ScoreRow(
                score,
                day,
                values,
                season.find(day).flatMap(d -> season.summary(d).sky()),
                spoilt);
    }

    /** Value of a predictor; empty where it is not wholly known. */
    public OptionalDouble value(Predictor predictor) {
        Double value = values.get(predictor);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
