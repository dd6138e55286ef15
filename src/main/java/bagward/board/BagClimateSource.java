package bagward.board;

import bagward.bag.BagClimate;
import bagward.bag.BagClimates;
import bagward.bag.BagMaterial;
import bagward.bag.Bagging;
import bagward.bag.Banded;
import bagward.bag.Head;
import bagward.bag.SensorLoan;
import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.station.PlaceClimates;
import bagward.station.Sensor;
import bagward.station.Spot;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** The climate inside bags from readings and register: estimated, and measured where a sensor was lent. One pass, one thread. */
final class BagClimateSource {
    /** Of a bag that was left on longer only the last part is looked at, so that a forgotten one costs no more. */
    static final Duration LONGEST = Duration.ofDays(21);

    private static final Duration STEP = Duration.ofMinutes(1);

    private final BoardInputs in;
    private final Places places;
    private final ClearSkyTable sky;

    /**
     * @param from when the oldest of the bags that are asked for was put on
     * @param until end of the time that is looked at
     */
    BagClimateSource(BoardInputs in, Instant from, Instant until) {
        this.in = in;
        Instant earliest = until.minus(LONGEST);
        Instant start = from.isBefore(earliest) ? earliest : from;
        // The grid holds the cell of "until" itself, so the newest reading is on it.
        TimeGrid grid = TimeGrid.covering(start, until.plusMillis(1), STEP);
        this.places = new Places(in.station(), in.readings(), grid, in.now());
        this.sky = new ClearSkyTable(PlaceClimates.site(in.station()));
    }

    /** All places on the grid of this source. */
    Places places() {
        return places;
    }

    /** What a bag is made of; empty if its material is no longer configured. */
    Optional<BagMaterial> material(Bagging bagging) {
        return Optional.ofNullable(in.materials().get(bagging.material()));
    }

    /** Where a head stands. */
    Place place(Head head) {
        Spot spot = head.spot();
        return places.at(spot.house(), Optional.of(spot.bay()));
    }

    /** The climate around and inside a bag; without a known material only what a lent sensor measured. */
    BaggedClimate climate(Head head, Bagging bagging) {
        Climate house = place(head).since(bagging.putOn());
        BagClimate estimate = material(bagging)
                .map(known -> BagClimates.estimate(house, known, bagging.putOn(), sky))
                .orElseGet(() -> unknown(house.grid()));
        BagClimate inside = estimate;
        for (SensorLoan loan : in.register().loans()) {
            Optional<Sensor> sensor = in.station().findSensor(loan.sensor());
            if (loan.tag().equals(head.tag()) && sensor.isPresent()) {
                inside = BagClimates.withMeasured(inside, measured(sensor.get(), loan, house.grid()));
            }
        }
        return new BaggedClimate(house, inside);
    }

    private Climate measured(Sensor sensor, SensorLoan loan, TimeGrid grid) {
        return new Climate(
                during(loan, PlaceClimates.series(sensor, Quantity.TEMPERATURE, in.readings(), grid)),
                during(loan, PlaceClimates.series(sensor, Quantity.HUMIDITY, in.readings(), grid)),
                RegularSeries.unknown(grid));
    }

    /** The cells that lie wholly in the loan; the others show the air where the sensor came from. */
    private static RegularSeries during(SensorLoan loan, RegularSeries series) {
        TimeGrid grid = series.grid();
        double[] values = series.toArray();
        for (int i = 0; i < values.length; i++) {
            boolean before = grid.at(i).isBefore(loan.from());
            boolean after = loan.to().filter(to -> to.isBefore(grid.end())).isPresent()
                    && grid.at(i + 1).isAfter(loan.to().orElseThrow());
            if (before || after) {
                values[i] = Double.NaN;
            }
        }
        return RegularSeries.of(grid, values);
    }

    private static BagClimate unknown(TimeGrid grid) {
        RegularSeries nothing = RegularSeries.unknown(grid);
        Banded banded = new Banded(nothing, nothing, nothing);
        return new BagClimate(banded, banded, new BitSet(), new BitSet());
    }

    /** The loan of a sensor that runs at an instant. */
    static Optional<SensorLoan> running(List<SensorLoan> loans, Head head, Instant now) {
        return loans.stream()
                .filter(loan -> loan.tag().equals(head.tag()) && runs(loan, now))
                .findFirst();
    }

    /** Whether a loan runs at an instant. */
    static boolean runs(SensorLoan loan, Instant now) {
        return !loan.from().isAfter(now) && loan.to().map(now::isBefore).orElse(true);
    }
}
