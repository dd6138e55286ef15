package bagward.board;

import bagward.bag.SensorLoan;
import bagward.climate.Climate;
import bagward.climate.ReadingSource;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.station.PlaceClimates;
import bagward.station.Sensor;
import bagward.units.Quantity;
import java.util.List;
import java.util.function.IntPredicate;

/** What a spare sensor said while it was lent, and while it was not. */
final class LentClimate {
    private LentClimate() {}

    /** The cells that lie wholly in a loan; the others show the air where the sensor came from. */
    static Climate during(SensorLoan loan, Sensor sensor, ReadingSource readings, TimeGrid grid) {
        return where(sensor, readings, grid, i -> wholly(loan, grid, i));
    }

    /** The cells in which a sensor hung in no bag. */
    static Climate outside(List<SensorLoan> loans, Sensor sensor, ReadingSource readings, TimeGrid grid) {
        List<SensorLoan> own =
                loans.stream().filter(loan -> loan.sensor().equals(sensor.id())).toList();
        return where(sensor, readings, grid, i -> own.stream().noneMatch(loan -> partly(loan, grid, i)));
    }

    private static Climate where(Sensor sensor, ReadingSource readings, TimeGrid grid, IntPredicate kept) {
        return new Climate(
                series(sensor, Quantity.TEMPERATURE, readings, grid, kept),
                series(sensor, Quantity.HUMIDITY, readings, grid, kept),
                RegularSeries.unknown(grid));
    }

    private static RegularSeries series(
            Sensor sensor, Quantity quantity, ReadingSource readings, TimeGrid grid, IntPredicate kept) {
        double[] values = PlaceClimates.series(sensor, quantity, readings, grid).toArray();
        for (int i = 0; i < values.length; i++) {
            if (!kept.test(i)) {
                values[i] = Double.NaN;
            }
        }
        return RegularSeries.of(grid, values);
    }

    private static boolean wholly(SensorLoan loan, TimeGrid grid, int i) {
        boolean before = grid.at(i).isBefore(loan.from());
        boolean after = loan.to().filter(to -> to.isBefore(grid.end())).isPresent()
                && grid.at(i + 1).isAfter(loan.to().orElseThrow());
        return !before && !after;
    }

    private static boolean partly(SensorLoan loan, TimeGrid grid, int i) {
        return grid.at(i + 1).isAfter(loan.from())
                && loan.to().map(to -> grid.at(i).isBefore(to)).orElse(true);
    }
}
