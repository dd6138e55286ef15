package bagward.climate;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Sums values that stand for a time into consecutive cells. Values come in the order of their times. */
final class Summing {
    private final long[] limits;
    private final long[] readings;
    private final double[] sums;
    private final double[] minima;
    private final double[] maxima;
    private final long[] covered;
    private int first;

    /** @param limits the first instant of each cell, and the first one after the last; rising */
    Summing(List<Instant> limits) {
        this.limits = limits.stream().mapToLong(Instant::toEpochMilli).toArray();
        int cells = Math.max(0, limits.size() - 1);
        readings = new long[cells];
        sums = new double[cells];
        minima = new double[cells];
        maxima = new double[cells];
        covered = new long[cells];
        Arrays.fill(minima, Double.POSITIVE_INFINITY);
        Arrays.fill(maxima, Double.NEGATIVE_INFINITY);
    }

    /** A reading of {@code from} stands until {@code to}, both in ms since 1970. */
    void add(long from, long to, double value) {
        while (first < sums.length && limits[first + 1] <= from) {
            first++;
        }
        for (int i = first; i < sums.length && limits[i] < to; i++) {
            long time = Math.min(to, limits[i + 1]) - Math.max(from, limits[i]);
            sums[i] += value * time;
            covered[i] += time;
            minima[i] = Math.min(minima[i], value);
            maxima[i] = Math.max(maxima[i], value);
            readings[i] += from >= limits[i] ? 1 : 0;
        }
    }

    /** The summaries of the cells of which anything is known. */
    List<Summary> summaries() {
        List<Summary> list = new ArrayList<>();
        for (int i = 0; i < sums.length; i++) {
            if (covered[i] > 0) {
                Span span = new Span(Instant.ofEpochMilli(limits[i]), Instant.ofEpochMilli(limits[i + 1]));
                list.add(new Summary(
                        span, readings[i], sums[i] / covered[i], minima[i], maxima[i], Duration.ofMillis(covered[i])));
            }
        }
        return list;
    }
}
