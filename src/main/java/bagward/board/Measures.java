package bagward.board;

import bagward.bag.Banded;
import bagward.bag.Coverage;
import bagward.bag.Origin;
import bagward.bag.SensorError;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.units.Quantity;
import java.time.Instant;
import java.util.Optional;

/** Newest values with their intervals. */
final class Measures {
    /** Standard deviation of a light sensor as a share of its value. A prior. */
    private static final double LIGHT_ERROR = 0.05;

    private Measures() {}

    /** A measured value with the interval of a usual sensor. */
    static Measure measured(Quantity quantity, double value, Instant asOf) {
        double half = Coverage.NINETY.deviations()
                * switch (quantity) {
                    case TEMPERATURE -> SensorError.USUAL.temperature();
                    case HUMIDITY -> SensorError.USUAL.humidityAt(value);
                    case LIGHT -> LIGHT_ERROR * value;
                    case BATTERY -> 0;
                };
        double low = Math.max(quantity.lowest(), value - half);
        double high = Math.min(quantity.highest(), value + half);
        return new Measure(value, low, high, Origin.MEASURED, asOf);
    }

    /** The newest cell of a banded series. */
    static Optional<Measure> newest(Banded banded, int cell, Origin origin, Instant asOf) {
        if (cell < 0) {
            return Optional.empty();
        }
        return Optional.of(new Measure(
                banded.middle().valueOrNaN(cell),
                banded.low().valueOrNaN(cell),
                banded.high().valueOrNaN(cell),
                origin,
                asOf));
    }

    /** The newest value of a quantity of a place, measured; the age is that of its newest reading. */
    static Optional<Measure> newest(Place place, RegularSeries series, Quantity quantity, Instant now) {
        int cell = newestKnown(series, now);
        if (cell < 0) {
            return Optional.empty();
        }
        Instant asOf = place.heardAt(quantity).orElse(series.grid().at(cell));
        return Optional.of(measured(quantity, series.valueOrNaN(cell), asOf));
    }

    /** The newest known cell that has begun by an instant; −1 if there is none. */
    static int newestKnown(RegularSeries series, Instant now) {
        TimeGrid grid = series.grid();
        int cell = Math.min(grid.size() - 1, grid.indexOf(now));
        while (cell >= 0 && !series.known(cell)) {
            cell--;
        }
        return cell;
    }
}
