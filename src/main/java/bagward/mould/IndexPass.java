package bagward.mould;

import bagward.bag.BagClimate;
import bagward.climate.RegularSeries;

/**
 * Runs the mould index over a bag in steps of an hour (or of a cell, where cells are longer). Bands are noted at the ends
 * of whole steps only, so that their times do not depend on where the climate ends.
 */
final class IndexPass {
    private final GrowthIndex model;
    private final BandClock clock;
    private double index;
    private double highest;
    private double dryHours;

    private IndexPass(GrowthIndex model, BandLimits limits) {
        this.model = model;
        this.clock = new BandClock(limits);
    }

    static Finding over(BagClimate climate, Organism organism, GrowthIndex model, Level level) {
        IndexPass pass = new IndexPass(model, organism.bands());
        pass.run(climate.temperature().middle(), level.humidityOf(climate));
        BandTimes times = pass.clock.times(climate.grid());
        String atHigh = times.high().isEmpty()
                ? ""
                : model.reason(organism.name(), organism.bands().high());
        return new Finding(pass.highest, times, model.reason(organism.name(), pass.highest), atHigh);
    }

    private void run(RegularSeries temperature, RegularSeries humidity) {
        int size = temperature.grid().size();
        double cellHours = temperature.grid().step().toSeconds() / 3600.0;
        int width = Math.max(1, (int) Math.round(1 / cellHours));
        for (int from = 0; from < size; from += width) {
            int to = Math.min(size, from + width);
            step(from, to, cellHours, temperature, humidity);
            if (to - from == width) {
                clock.note(index, to);
            }
        }
    }

    private void step(int from, int to, double cellHours, RegularSeries temperature, RegularSeries humidity) {
        double degrees = 0;
        double percents = 0;
        int known = 0;
        for (int i = from; i < to; i++) {
            if (temperature.known(i) && humidity.known(i)) {
                degrees += temperature.valueOrNaN(i);
                percents += humidity.valueOrNaN(i);
                known++;
            }
        }
        if (known * 2 >= to - from && known > 0) {
            grow(degrees / known, percents / known, (to - from) * cellHours);
        }
    }

    private void grow(double celsius, double percent, double hours) {
        dryHours = model.dry(celsius, percent) ? dryHours + hours : 0;
        index = model.after(index, celsius, percent, dryHours, hours);
        highest = Math.max(highest, index);
    }
}
