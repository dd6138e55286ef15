package bagward.pollen;

import bagward.bag.PollenScore;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A score with the value that it is set against.
 *
 * @param day its civil day
 * @param at when it was taken
 * @param score 0 to 3
 * @param value of the predictor, in its unit
 */
public record ScorePoint(LocalDate day, Instant at, int score, double value) {
    /** A full order, so that nothing depends on the order in which scores were entered. */
    static final Comparator<ScorePoint> BY_TIME = Comparator.comparing(ScorePoint::at)
            .thenComparingInt(ScorePoint::score)
            .thenComparingDouble(ScorePoint::value);

    /** The points of rows for a predictor; rows in which it is not wholly known are left out. */
    public static List<ScorePoint> of(List<ScoreRow> rows, Predictor predictor) {
        return rows.stream().flatMap(row -> of(row, predictor)).toList();
    }

    private static Stream<ScorePoint> of(ScoreRow row, Predictor predictor) {
        return row.value(predictor).stream()
                .mapToObj(value ->
                        new ScorePoint(row.day(), row.score().at(), row.score().number(), value));
    }

    /** Whether there was clear or plentiful pollen. */
    boolean enough() {
        return score >= PollenScore.CLEAR.number();
    }
}
