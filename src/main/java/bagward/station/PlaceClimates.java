package bagward.station;

import bagward.climate.Agreement;
import bagward.climate.Climate;
import bagward.climate.MergedSeries;
import bagward.climate.ReadingSource;
import bagward.climate.RegularSeries;
import bagward.climate.Resampler;
import bagward.climate.SeriesId;
import bagward.climate.Site;
import bagward.climate.TimeGrid;
import bagward.climate.TimedValues;
import bagward.units.Quantity;
import java.time.Duration;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * The climate of a house or bay from its sensors.
 *
 * <p>Each quantity comes from the sensors of the bay; a quantity that no sensor of the bay measures comes from the
 * sensors of the house as a whole, and where the house has none of those, from all of its bays. Spare sensors never
 * count. A bay sensor that has fallen silent leaves a gap: the rest of the house does not stand in for it unseen.
 */
public final class PlaceClimates {
    /** A reading holds for this many expected intervals, so that one lost message leaves no gap and three do. */
    private static final int HOLD_INTERVALS = 3;

    private PlaceClimates() {}

    /**
     * The climate of a place.
     *
     * @param bay the bay; empty for the house as a whole
     * @param source where the readings come from, with corrections already applied
     * @param grid the cells of the result
     */
    public static Climate climate(
            Station station, HouseId house, Optional<BayId> bay, ReadingSource source, TimeGrid grid) {
        return new Climate(
                merged(sensors(station, house, bay, Quantity.TEMPERATURE), Quantity.TEMPERATURE, source, grid)
                        .series(),
                merged(sensors(station, house, bay, Quantity.HUMIDITY), Quantity.HUMIDITY, source, grid)
                        .series(),
                merged(sensors(station, house, bay, Quantity.LIGHT), Quantity.LIGHT, source, grid)
                        .series());
    }

    /** The sensors that a quantity of a place comes from, in the order of the configuration; may be none. */
    public static List<Sensor> sensors(Station station, HouseId house, Optional<BayId> bay, Quantity quantity) {
        List<Sensor> inHouse = station.sensors().stream()
                .filter(s -> s.house().equals(house) && !s.spare())
                .filter(s -> s.quantities().contains(quantity))
                .toList();
        List<Sensor> ofPlace = withBay(inHouse, bay);
        List<Sensor> ofHouse = ofPlace.isEmpty() ? withBay(inHouse, Optional.empty()) : ofPlace;
        return ofHouse.isEmpty() ? inHouse : ofHouse;
    }

    /** Sensors of a place that lay apart from the others of that place, each with its number of cells; often none. */
    public static List<Disagreement> disagreements(
            Station station, HouseId house, Optional<BayId> bay, ReadingSource source, TimeGrid grid) {
        List<Disagreement> found = new ArrayList<>();
        for (Quantity quantity : Quantity.values()) {
            List<Sensor> sensors = sensors(station, house, bay, quantity);
            List<BitSet> outliers = merged(sensors, quantity, source, grid).outliers();
            for (int i = 0; i < sensors.size(); i++) {
                int cells = outliers.get(i).cardinality();
                if (cells > 0) {
                    Duration time = grid.step().multipliedBy(cells);
                    found.add(new Disagreement(new SeriesId(sensors.get(i).id(), quantity), time));
                }
            }
        }
        return found;
    }

    /** One series of a sensor on a grid; readings hold for three expected intervals. */
    public static RegularSeries series(Sensor sensor, Quantity quantity, ReadingSource source, TimeGrid grid) {
        Duration hold = hold(sensor);
        TimedValues values =
                source.values(new SeriesId(sensor.id(), quantity), grid.start().minus(hold), grid.end());
        return Resampler.onto(grid, values, hold);
    }

    /** Longest time for which a reading of a sensor stands when no other follows. */
    public static Duration hold(Sensor sensor) {
        return sensor.expectedEvery().multipliedBy(HOLD_INTERVALS);
    }

    /** Where the station is, for sun and light. */
    public static Site site(Station station) {
        return new Site(station.latitude(), station.longitude(), station.elevation());
    }

    private static List<Sensor> withBay(List<Sensor> sensors, Optional<BayId> bay) {
        return sensors.stream().filter(s -> s.bay().equals(bay)).toList();
    }

    private static MergedSeries merged(List<Sensor> sensors, Quantity quantity, ReadingSource source, TimeGrid grid) {
        List<RegularSeries> parts = sensors.stream()
                .map(sensor -> series(sensor, quantity, source, grid))
                .toList();
        return MergedSeries.of(grid, parts, Agreement.usual(quantity));
    }

    /**
     * A sensor that lay apart from the median of its place.
     *
     * @param series which quantity of which sensor
     * @param time how long in all
     */
    public record Disagreement(SeriesId series, Duration time) {}
}
