package bagward.pollen;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Scores with a known predictor, day by day. Each day weighs one, however often it was scored: the scores of one day are
 * not news to each other.
 */
final class DayScores {
    private final List<List<ScorePoint>> days;
    private final int[] scores;
    private final double[][] predictors;
    private final int[] dayOfRow;

    /** @param points in any order */
    DayScores(List<ScorePoint> points) {
        SortedMap<LocalDate, List<ScorePoint>> byDay = new TreeMap<>();
        points.stream()
                .sorted(ScorePoint.BY_TIME)
                .forEach(point -> byDay.computeIfAbsent(point.day(), day -> new ArrayList<>())
                        .add(point));
        this.days = List.copyOf(byDay.values());
        List<ScorePoint> all = days.stream().flatMap(List::stream).toList();
        this.scores = all.stream().mapToInt(ScorePoint::score).toArray();
        this.predictors = all.stream().map(p -> new double[] {p.value()}).toArray(double[][]::new);
        this.dayOfRow = dayNumbers(days);
    }

    private static int[] dayNumbers(List<List<ScorePoint>> days) {
        List<Integer> numbers = new ArrayList<>();
        for (int day = 0; day < days.size(); day++) {
            for (int i = 0; i < days.get(day).size(); i++) {
                numbers.add(day);
            }
        }
        return numbers.stream().mapToInt(n -> n).toArray();
    }

    int days() {
        return days.size();
    }

    int rows() {
        return scores.length;
    }

    /** Days on which at least half of the scores said clear or plentiful. */
    int daysWithPollen() {
        return (int) days.stream()
                .filter(day -> 2 * day.stream().filter(ScorePoint::enough).count() >= day.size())
                .count();
    }

    /** Mean score of each day. */
    double[] dayScores() {
        return days.stream()
                .mapToDouble(day ->
                        day.stream().mapToInt(ScorePoint::score).average().orElseThrow())
                .toArray();
    }

    /** Mean predictor of each day. */
    double[] dayPredictors() {
        return days.stream()
                .mapToDouble(day ->
                        day.stream().mapToDouble(ScorePoint::value).average().orElseThrow())
                .toArray();
    }

    /** The regression over all days. */
    OrdinalFit fit() {
        int[] once = new int[days.size()];
        for (int i = 0; i < once.length; i++) {
            once[i] = i;
        }
        return fit(once);
    }

    /** The regression over drawn days, some more than once. */
    OrdinalFit fit(int[] drawn) {
        Map<Integer, Integer> times = new HashMap<>();
        for (int day : drawn) {
            times.merge(day, 1, Integer::sum);
        }
        double[] weights = new double[scores.length];
        for (int row = 0; row < weights.length; row++) {
            int day = dayOfRow[row];
            weights[row] = times.getOrDefault(day, 0) / (double) days.get(day).size();
        }
        return ProportionalOdds.fit(scores, predictors, weights);
    }

    /** The same, empty if the drawn days cannot bear it. */
    Optional<OrdinalFit> tryFit(int[] drawn) {
        try {
            return Optional.of(fit(drawn));
        } catch (TooFewDataException cannot) {
            return Optional.empty();
        }
    }
}
