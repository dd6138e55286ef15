package bagward.bag;

import bagward.climate.Climate;
import bagward.climate.RegularSeries;

/** How an estimate compares with what was there: counted over cells in which both are known. */
final class Trial {
    private double squares;
    private long cells;
    private long held;

    /** Counts the humidity of all cells. */
    Trial humidity(BagClimate estimate, RegularSeries truth) {
        for (int i = 0; i < truth.grid().size(); i++) {
            cell(estimate.humidity(), truth, i);
        }
        return this;
    }

    /** Counts the humidity of dark cells. */
    Trial nightHumidity(BagClimate estimate, RegularSeries truth, Climate house) {
        for (int i = 0; i < truth.grid().size(); i++) {
            if (house.light().valueOrNaN(i) < 1) {
                cell(estimate.humidity(), truth, i);
            }
        }
        return this;
    }

    /** Counts the temperature of all cells. */
    Trial temperature(BagClimate estimate, RegularSeries truth) {
        for (int i = 0; i < truth.grid().size(); i++) {
            cell(estimate.temperature(), truth, i);
        }
        return this;
    }

    private void cell(Banded estimate, RegularSeries truth, int i) {
        double error = estimate.middle().valueOrNaN(i) - truth.valueOrNaN(i);
        if (!Double.isNaN(error)) {
            squares += error * error;
            cells++;
            boolean inside = truth.valueOrNaN(i) >= estimate.low().valueOrNaN(i)
                    && truth.valueOrNaN(i) <= estimate.high().valueOrNaN(i);
            held += inside ? 1 : 0;
        }
    }

    /** Root mean square error. */
    double error() {
        return Math.sqrt(squares / cells);
    }

    /** Share of cells whose interval held the truth. */
    double held() {
        return (double) held / cells;
    }

    long cells() {
        return cells;
    }
}
