package bagward.site.chart;

import bagward.pollen.Chance;
import bagward.pollen.FittedRelation;
import bagward.pollen.ScorePoint;
import bagward.site.view.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Scores against a predictor, and below them the fitted chance of clear or plentiful pollen with its band.
 *
 * @param width units
 * @param height units
 * @param left left edge of both plots
 * @param right their right edge
 * @param dots scores
 * @param levels labelled scores at the left
 * @param percents labelled chances at the left
 * @param values labelled values of the predictor below
 * @param line the fitted chance
 * @param band its interval
 */
public record PollenScatter(
        double width,
        double height,
        double left,
        double right,
        List<PollenDays.Dot> dots,
        List<Panel.Label> levels,
        List<Panel.Label> percents,
        List<Panel.Label> values,
        String line,
        String band) {
    private static final double LEFT = 40;
    private static final double TOP = 22;
    private static final double LEVEL = 20;
    private static final double CURVE_TOP = TOP + 4 * LEVEL + 36;
    private static final double CURVE_HEIGHT = 110;
    private static final double BOTTOM = CURVE_TOP + CURVE_HEIGHT;
    private static final int STEPS = 40;

    /** Copies the lists. */
    public PollenScatter {
        dots = List.copyOf(dots);
        levels = List.copyOf(levels);
        percents = List.copyOf(percents);
        values = List.copyOf(values);
    }

    /** The picture of a relation with the points it rests on. */
    public static PollenScatter draw(FittedRelation relation, List<ScorePoint> points, double width) {
        double right = width - 10;
        double low = points.stream().mapToDouble(ScorePoint::value).min().orElse(relation.lowest());
        double high = points.stream().mapToDouble(ScorePoint::value).max().orElse(relation.highest());
        Axis axis = new Axis(low, high, right);
        StringBuilder line = new StringBuilder();
        StringBuilder upper = new StringBuilder();
        StringBuilder lower = new StringBuilder();
        for (int i = 0; i <= STEPS; i++) {
            double value = low + (high - low) * i / STEPS;
            Chance chance = relation.at(value);
            double x = axis.x(value);
            String begin = i == 0 ? "M" : "L";
            line.append(begin).append(Frame.point(x, y(chance.probability())));
            upper.append(begin).append(Frame.point(x, y(chance.interval().high())));
            lower.insert(0, "L" + Frame.point(x, y(chance.interval().low())));
        }
        return new PollenScatter(
                width,
                BOTTOM + 40,
                LEFT,
                right,
                dots(points, axis),
                levelLabels(),
                percentLabels(),
                axis.labels(),
                line.toString(),
                upper.append(lower).append("Z").toString());
    }

    private record Axis(double low, double high, double right) {
        double x(double value) {
            return LEFT + 8 + (right - LEFT - 16) * (value - low) / (high - low);
        }

        List<Panel.Label> labels() {
            List<Panel.Label> labels = new ArrayList<>();
            for (int i = 0; i <= 4; i++) {
                double value = low + (high - low) * i / 4;
                labels.add(new Panel.Label(x(value), BOTTOM + 16, Words.oneDecimal(value)));
            }
            return labels;
        }
    }

    private static double y(double probability) {
        return BOTTOM - CURVE_HEIGHT * probability;
    }

    private static double level(int score) {
        return TOP + (3 - score) * LEVEL + LEVEL / 2;
    }

    private static List<PollenDays.Dot> dots(List<ScorePoint> points, Axis axis) {
        Map<List<Long>, Integer> counts = new HashMap<>();
        List<PollenDays.Dot> dots = new ArrayList<>();
        for (ScorePoint point : points) {
            counts.merge(place(point, axis), 1, Integer::sum);
        }
        counts.forEach((place, count) -> dots.add(
                new PollenDays.Dot(place.get(0), level((int) (long) place.get(1)), Math.min(8, 3 + Math.sqrt(count)))));
        dots.sort(java.util.Comparator.comparingDouble(PollenDays.Dot::x).thenComparingDouble(PollenDays.Dot::y));
        return dots;
    }

    private static List<Long> place(ScorePoint point, Axis axis) {
        return List.of(Math.round(axis.x(point.value())), (long) point.score());
    }

    private static List<Panel.Label> levelLabels() {
        List<Panel.Label> levels = new ArrayList<>();
        for (int score = 0; score <= 3; score++) {
            levels.add(new Panel.Label(LEFT - 6, level(score), Integer.toString(score)));
        }
        return levels;
    }

    private static List<Panel.Label> percentLabels() {
        List<Panel.Label> labels = new ArrayList<>();
        for (int percent = 0; percent <= 100; percent += 25) {
            labels.add(new Panel.Label(LEFT - 6, y(percent / 100.0), Integer.toString(percent)));
        }
        return labels;
    }
}
