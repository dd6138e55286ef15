package bagward.mould;

import bagward.climate.RegularSeries;
import java.util.function.IntConsumer;

/**
 * Steps a mould index over a climate by the hour (or by the cell, where cells are longer). An hour of which less than half is
 * known leaves index and drying time as they are. Lives only during one pass.
 */
final class IndexWalk {
    private final GrowthIndex model;
    private double index;
    private double highest;
    private double dryHours;
    private double growingHours;
    private double knownHours;
    private double unknownHours;

    IndexWalk(GrowthIndex model, IndexState before) {
        this.model = model;
        this.index = before.index();
        this.highest = before.highest();
        this.dryHours = before.dryHours();
    }

    /** Goes over a climate; whoever waits is told the end cell of each whole step. */
    void over(RegularSeries temperature, RegularSeries humidity, IntConsumer wholeStep) {
        int size = temperature.grid().size();
        double cellHours = temperature.grid().step().toSeconds() / 3600.0;
        int width = Math.max(1, (int) Math.round(1 / cellHours));
        for (int from = 0; from < size; from += width) {
            int to = Math.min(size, from + width);
            step(from, to, cellHours, temperature, humidity);
            if (to - from == width) {
                wholeStep.accept(to);
            }
        }
    }

    double index() {
        return index;
    }

    double highest() {
        return highest;
    }

    IndexStretch stretch() {
        return new IndexStretch(new IndexState(index, highest, dryHours), growingHours, knownHours, unknownHours);
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
        double hours = (to - from) * cellHours;
        if (known * 2 >= to - from && known > 0) {
            grow(degrees / known, percents / known, hours);
        } else {
            unknownHours += hours;
        }
    }

    private void grow(double celsius, double percent, double hours) {
        boolean dry = model.dry(celsius, percent);
        dryHours = dry ? dryHours + hours : 0;
        index = model.after(index, celsius, percent, dryHours, hours);
        highest = Math.max(highest, index);
        knownHours += hours;
        growingHours += dry || celsius <= 0 ? 0 : hours;
    }
}
