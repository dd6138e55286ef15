package bagward.pollen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * A relation that could be estimated: Spearman's rank correlation of day means, and the proportional-odds regression
 * with every day at one weight. Intervals come from resampled runs of days.
 *
 * @param predictor what the scores are set against
 * @param days days behind it
 * @param scores scores behind it
 * @param rank rank correlation of the days
 * @param rankInterval its interval; empty if it is undefined too often
 * @param fit the regression
 * @param slope interval of its coefficient, log odds for each unit of the predictor
 * @param lowest lowest predictor that was seen
 * @param highest highest predictor that was seen
 * @param resampled the regression on each resample that could bear it
 * @param bootstrap what the intervals are made with
 */
public record FittedRelation(
        Predictor predictor,
        int days,
        int scores,
        RankCorrelation rank,
        Optional<Interval> rankInterval,
        OrdinalFit fit,
        Interval slope,
        double lowest,
        double highest,
        List<OrdinalFit> resampled,
        BlockBootstrap bootstrap)
        implements Relation, ChanceModel {
    /** A rank correlation of 1 has no end on Fisher's scale; it is held just below. */
    private static final double NEARLY_ONE = 0.9999;

    /** Copies the list. */
    public FittedRelation {
        resampled = List.copyOf(resampled);
    }

    /** @throws TooFewDataException if the days cannot bear it */
    static FittedRelation of(Predictor predictor, DayScores data, BlockBootstrap bootstrap) {
        OrdinalFit fit = data.fit();
        double[] x = data.dayPredictors();
        double[] y = data.dayScores();
        RankCorrelation rank = Spearman.correlate(x, y);
        List<int[]> samples = bootstrap.samples(data.days());
        List<OrdinalFit> resampled = new ArrayList<>();
        double[] slopes = new double[samples.size()];
        double[] ranks = new double[samples.size()];
        for (int i = 0; i < slopes.length; i++) {
            Optional<OrdinalFit> again = data.tryFit(samples.get(i));
            again.ifPresent(resampled::add);
            slopes[i] = again.map(f -> f.coefficients().get(0)).orElse(Double.NaN);
            ranks[i] = fisher(Spearman.coefficient(drawn(x, samples.get(i)), drawn(y, samples.get(i))));
        }
        Interval slope = bootstrap
                .around(fit.coefficients().get(0), slopes)
                .orElseThrow(() -> new TooFewDataException(
                        "the scores are so nearly separated by the predictor that no interval can be given: wait for more"
                                + " days"));
        Optional<Interval> rankInterval = bootstrap
                .around(fisher(rank.coefficient()), ranks)
                .map(found -> new Interval(Math.tanh(found.low()), Math.tanh(found.high()), found.level()));
        return new FittedRelation(
                predictor,
                data.days(),
                data.rows(),
                rank,
                rankInterval,
                fit,
                slope,
                extreme(x, 0),
                extreme(x, 1),
                resampled,
                bootstrap);
    }

    private static double fisher(double rho) {
        double held = Math.max(-NEARLY_ONE, Math.min(NEARLY_ONE, rho));
        return 0.5 * Math.log((1 + held) / (1 - held));
    }

    private static double[] drawn(double[] values, int[] days) {
        double[] drawn = new double[days.length];
        for (int i = 0; i < days.length; i++) {
            drawn[i] = values[days[i]];
        }
        return drawn;
    }

    private static double extreme(double[] values, int end) {
        double[] sorted = values.clone();
        java.util.Arrays.sort(sorted);
        return sorted[end * (sorted.length - 1)];
    }

    @Override
    public Chance at(double value) {
        ToDoubleFunction<OrdinalFit> logOdds = f -> f.logOddsAtLeast(PriorChance.ENOUGH, value);
        double estimate = logOdds.applyAsDouble(fit);
        double[] again =
                resampled.stream().mapToDouble(logOdds).filter(Double::isFinite).toArray();
        Interval band = bootstrap.around(estimate, again).orElseThrow();
        return Chance.ofLogOdds(estimate, band, Chance.Basis.LEARNT);
    }

    /** Whether the interval of the slope leaves its sign open. */
    public boolean uncertainSign() {
        return slope.holds(0);
    }
}
