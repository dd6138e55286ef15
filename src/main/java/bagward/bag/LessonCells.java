package bagward.bag;

import bagward.climate.Climate;
import bagward.climate.MoistAir;
import bagward.climate.TimeGrid;

/**
 * The cells of a sensored bag as plain columns, with the sensor pair's offset taken off.
 *
 * @param stepMinutes length of a cell
 * @param houseTemperature °C
 * @param houseVapour kPa
 * @param global light at the bag, W m⁻²
 * @param day share of day, 0 to 1
 * @param bagTemperature °C
 * @param bagHumidity %RH
 * @param weight 1 for the last cell heard, less for older ones, 0 where anything is unknown
 */
@SuppressWarnings("ArrayRecordComponent") // never leaves the fit; compared by no one
record LessonCells(
        double stepMinutes,
        double[] houseTemperature,
        double[] houseVapour,
        double[] global,
        double[] day,
        double[] bagTemperature,
        double[] bagHumidity,
        double[] weight) {
    private static final double MINUTES_PER_DAY = 1440;

    static LessonCells of(SensoredBag bag, double halfLifeDays) {
        Climate house = bag.house();
        TimeGrid grid = house.grid();
        int size = grid.size();
        LessonCells cells = new LessonCells(
                grid.step().toSeconds() / 60.0,
                house.temperature().toArray(),
                new double[size],
                new double[size],
                new double[size],
                bag.measured().temperature().toArray(),
                bag.measured().humidity().toArray(),
                new double[size]);
        for (int i = 0; i < size; i++) {
            cells.fill(i, bag);
        }
        cells.weigh(halfLifeDays);
        return cells;
    }

    private void fill(int i, SensoredBag bag) {
        double humidity = bag.house().humidity().valueOrNaN(i);
        houseVapour[i] = MoistAir.vapourKilopascals(houseTemperature[i], humidity);
        global[i] = Daylight.global(bag.house().light().valueOrNaN(i));
        day[i] = Daylight.share(global[i]);
        bagTemperature[i] -= bag.pairOffset().temperature().mean();
        bagHumidity[i] =
                Math.min(100, bagHumidity[i] - bag.pairOffset().humidity().mean());
    }

    private void weigh(double halfLifeDays) {
        int last = weight.length - 1;
        while (last >= 0 && !known(last)) {
            last--;
        }
        for (int i = 0; i <= last; i++) {
            double age = (last - i) * stepMinutes / MINUTES_PER_DAY;
            weight[i] = known(i) ? Math.pow(0.5, age / halfLifeDays) : 0;
        }
    }

    private boolean known(int i) {
        return !Double.isNaN(houseVapour[i] + global[i] + bagTemperature[i] + bagHumidity[i]);
    }

    double heardMinutes() {
        int heard = 0;
        for (double w : weight) {
            heard += w > 0 ? 1 : 0;
        }
        return heard * stepMinutes;
    }

    int cellsPerDay() {
        return (int) Math.max(1, Math.round(MINUTES_PER_DAY / stepMinutes));
    }

    double[] lagged(double[] values, double response) {
        return LaggedHouse.lagged(values, stepMinutes, response);
    }

    /** Mean of 100 − RH if the bag were open, %RH. */
    double meanDryness() {
        double sum = 0;
        double all = 0;
        for (int i = 0; i < weight.length; i++) {
            if (weight[i] > 0) {
                double open = 100 * houseVapour[i] / MoistAir.saturationKilopascals(bagTemperature[i]);
                sum += weight[i] * (100 - open);
                all += weight[i];
            }
        }
        return all > 0 ? sum / all : 0;
    }

    /** Mean global light of cells that are day, W m⁻²; 0 without any. */
    double meanGlobalByDay() {
        double sum = 0;
        double all = 0;
        for (int i = 0; i < weight.length; i++) {
            if (weight[i] > 0 && day[i] >= 1) {
                sum += weight[i] * global[i];
                all += weight[i];
            }
        }
        return all > 0 ? sum / all : 0;
    }

    /** Root mean square of measured less fitted humidity, %RH. */
    double humidityRest(TwoTermFit vapour, double response) {
        double[] house = lagged(houseVapour, response);
        double sum = 0;
        double all = 0;
        for (int i = 0; i < weight.length; i++) {
            if (weight[i] > 0) {
                double f = vapour.first().mean() * day[i] + vapour.second().mean() * (1 - day[i]);
                double open = 100 * house[i] / MoistAir.saturationKilopascals(bagTemperature[i]);
                double rest = bagHumidity[i] - Math.min(100, open + f * (100 - open));
                sum += weight[i] * rest * rest;
                all += weight[i];
            }
        }
        return all > 0 ? Math.sqrt(sum / all) : 0;
    }
}
