package bagward.mould;

import bagward.bag.BagClimate;
import bagward.bag.Banded;
import bagward.bag.FilmWetness;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** Writes bag climates as a sequence of stretches, for tests. */
final class Bags {
    static final Instant START = Instant.parse("2031-04-11T18:00:00Z");

    private final Duration step;
    private final List<double[]> cells = new ArrayList<>();
    private final BitSet film = new BitSet();
    private double spread;

    private Bags(Duration step) {
        this.step = step;
    }

    static Bags everyMinute() {
        return new Bags(Duration.ofMinutes(1));
    }

    static Bags everyHour() {
        return new Bags(Duration.ofHours(1));
    }

    /** Half the width of the humidity interval, %RH. */
    Bags sureTo(double percent) {
        spread = percent;
        return this;
    }

    Bags air(double hours, double celsius, double percent) {
        for (int i = 0; i < cellsIn(hours); i++) {
            cells.add(new double[] {celsius, percent});
        }
        return this;
    }

    Bags filmWet(double hours, double celsius, double percent) {
        film.set(cells.size(), cells.size() + cellsIn(hours));
        return air(hours, celsius, percent);
    }

    Bags gap(double hours) {
        return air(hours, Double.NaN, Double.NaN);
    }

    BagClimate build() {
        TimeGrid grid = new TimeGrid(START, step, cells.size());
        double[] temperature = cells.stream().mapToDouble(c -> c[0]).toArray();
        double[] humidity = cells.stream().mapToDouble(c -> c[1]).toArray();
        return new BagClimate(
                banded(grid, temperature, 0, 100),
                banded(grid, humidity, spread, 100),
                new BitSet(),
                new FilmWetness(new BitSet(), film, film));
    }

    private static Banded banded(TimeGrid grid, double[] values, double spread, double highest) {
        double[] low = values.clone();
        double[] high = values.clone();
        for (int i = 0; i < values.length; i++) {
            low[i] -= spread;
            high[i] = Double.isNaN(high[i]) ? high[i] : Math.min(highest, high[i] + spread);
        }
        return new Banded(RegularSeries.of(grid, values), RegularSeries.of(grid, low), RegularSeries.of(grid, high));
    }

    private int cellsIn(double hours) {
        return (int) Math.round(hours * 3600 / step.toSeconds());
    }
}
