package bagward.site.chart;

import bagward.climate.RegularSeries;
import bagward.site.view.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Round limits of an axis.
 *
 * @param low lowest value
 * @param high highest value
 * @param step between labels
 */
record Scale(double low, double high, double step) {
    /** Covers all series between two cells with round limits, and spans at least so much. */
    static Scale covering(List<RegularSeries> series, int from, int to, double smallestSpan) {
        Stream<RegularSeries> all = series.stream();
        double[] known = all.flatMapToDouble(s -> cells(s, from, to)).sorted().toArray();
        double lowest = known.length == 0 ? 0 : known[0];
        double highest = known.length == 0 ? smallestSpan : known[known.length - 1];
        double span = Math.max(smallestSpan, highest - lowest);
        double step = step(span);
        double low = Math.floor(lowest / step) * step;
        double high = Math.ceil(Math.max(highest, low + smallestSpan) / step) * step;
        return new Scale(low, high, step);
    }

    /** The axis of a humidity that was found to span so much: to saturation, from a round value below 60. */
    static Scale ofHumidity(Scale found) {
        return new Scale(Math.max(0, Math.min(60, Math.floor(found.low() / 20) * 20)), 100, 20);
    }

    /** The label of the limit line. */
    static String dampText(double limit) {
        return "damp from " + Words.whole(limit);
    }

    private static DoubleStream cells(RegularSeries series, int from, int to) {
        return java.util.stream.IntStream.range(
                        Math.max(0, from), Math.min(series.grid().size(), to))
                .filter(series::known)
                .mapToDouble(series::valueOrNaN);
    }

    private static double step(double span) {
        double rough = span / 4;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double share = rough / power;
        double nice = share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10;
        return nice * power;
    }

    List<Double> labels() {
        List<Double> labels = new ArrayList<>();
        for (double value = low; value <= high + step / 1000; value += step) {
            labels.add(value);
        }
        return labels;
    }
}
