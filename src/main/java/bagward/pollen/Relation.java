package bagward.pollen;

import java.util.List;
import java.util.Optional;

/** How the scores of a house hang together with a predictor: an association, which proves no cause. */
public sealed interface Relation permits Relation.NotYet, FittedRelation {
    /** Fewest scored days. A choice of ours: below it intervals are so wide that they say nothing. */
    int LEAST_DAYS = 15;

    /** Fewest days with and without clear pollen among them. */
    int LEAST_OF_EACH = 3;

    /** What the scores are set against. */
    Predictor predictor();

    /** Days with a score and a wholly known predictor. */
    int days();

    /**
     * Too little is known.
     *
     * @param predictor what the scores are set against
     * @param days days with a score and a wholly known predictor
     * @param missing what is missing, for people
     */
    record NotYet(Predictor predictor, int days, String missing) implements Relation {}

    /**
     * The relation of a predictor to scores.
     *
     * @param points in any order
     * @param bootstrap for the intervals
     */
    static Relation of(List<ScorePoint> points, Predictor predictor, BlockBootstrap bootstrap) {
        DayScores data = new DayScores(points);
        Optional<String> missing = missing(data);
        if (missing.isPresent()) {
            return new NotYet(predictor, data.days(), missing.get());
        }
        try {
            return FittedRelation.of(predictor, data, bootstrap);
        } catch (TooFewDataException cannot) {
            return new NotYet(predictor, data.days(), String.valueOf(cannot.getMessage()));
        }
    }

    /** The regression alone, without intervals; empty where {@link #of} would say that too little is known. */
    static Optional<OrdinalFit> estimate(List<ScorePoint> points) {
        DayScores data = new DayScores(points);
        try {
            return missing(data).isPresent() ? Optional.empty() : Optional.of(data.fit());
        } catch (TooFewDataException cannot) {
            return Optional.empty();
        }
    }

    private static Optional<String> missing(DayScores data) {
        int more = LEAST_DAYS - data.days();
        if (more > 0) {
            return Optional.of((more == 1 ? "1 more scored day is" : more + " more scored days are") + " needed, of "
                    + LEAST_DAYS);
        }
        int with = data.daysWithPollen();
        if (with < LEAST_OF_EACH) {
            return Optional.of(
                    LEAST_OF_EACH - with + " more with clear or plentiful pollen needed, of " + LEAST_OF_EACH);
        }
        int without = data.days() - with;
        return without < LEAST_OF_EACH
                ? Optional.of(LEAST_OF_EACH - without + " more with a trace or none needed, of " + LEAST_OF_EACH)
                : Optional.empty();
    }
}
