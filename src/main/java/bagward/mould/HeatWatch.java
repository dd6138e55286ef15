package bagward.mould;

import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import java.time.Instant;
import java.util.Optional;

/**
 * Finds heat in a temperature series. A cell at or below the heat limit ends a run of hot hours; a gap does not, nor
 * does it add to one.
 */
public final class HeatWatch {
    private final HeatLimits limits;
    private final RegularSeries temperature;
    private HeatBand now = HeatBand.NONE;
    private HeatBand worst = HeatBand.NONE;
    private double hottest = Double.NEGATIVE_INFINITY;
    private int hotRun;
    private int longestHotRun;
    private int unknown;
    private int endOfLastHeat = -1;

    private HeatWatch(RegularSeries temperature, HeatLimits limits) {
        this.temperature = temperature;
        this.limits = limits;
    }

    /**
     * Heat over a whole series.
     *
     * @param temperature in-bag temperature, °C
     * @param limits what the crop bears
     */
    public static HeatAssessment assess(RegularSeries temperature, HeatLimits limits) {
        HeatWatch watch = new HeatWatch(temperature, limits);
        watch.run();
        return watch.assessment();
    }

    private void run() {
        long cellsForHeat = Math.max(
                1, limits.heatFor().toSeconds() / temperature.grid().step().toSeconds());
        for (int i = 0; i < temperature.grid().size(); i++) {
            if (temperature.known(i)) {
                take(i, temperature.valueOrNaN(i), cellsForHeat);
            } else {
                unknown++;
            }
        }
    }

    private void take(int cell, double celsius, long cellsForHeat) {
        hotRun = celsius > limits.heatCelsius() ? hotRun + 1 : 0;
        longestHotRun = Math.max(longestHotRun, hotRun);
        hottest = Math.max(hottest, celsius);
        now = bandOf(celsius, hotRun >= cellsForHeat);
        if (now.compareTo(worst) > 0) {
            worst = now;
        }
        if (now.compareTo(HeatBand.HEAT) >= 0) {
            endOfLastHeat = cell + 1;
        }
    }

    private HeatBand bandOf(double celsius, boolean hotLongEnough) {
        if (celsius > limits.lossCelsius()) {
            return HeatBand.POLLEN_LOSS;
        }
        if (hotLongEnough) {
            return HeatBand.HEAT;
        }
        return celsius > limits.watchCelsius() ? HeatBand.WATCH : HeatBand.NONE;
    }

    private HeatAssessment assessment() {
        TimeGrid grid = temperature.grid();
        double cellHours = grid.step().toSeconds() / 3600.0;
        Optional<Instant> lastHeat = endOfLastHeat < 0 ? Optional.empty() : Optional.of(grid.at(endOfLastHeat));
        String hottestSoFar = hottest == Double.NEGATIVE_INFINITY
                ? "temperature unknown"
                : Say.format(
                        "up to %.1f °C, above %.0f °C for %.1f h at a stretch",
                        hottest, limits.heatCelsius(), longestHotRun * cellHours);
        String gaps = unknown == 0 ? "" : Say.format("; %.1f h unknown", unknown * cellHours);
        return new HeatAssessment(now, worst, lastHeat, hottestSoFar + gaps, unknown * cellHours);
    }
}
