package bagward.board;

import bagward.climate.Reading;
import bagward.climate.ReadingSource;
import bagward.climate.SeriesId;
import bagward.climate.TimeGrid;
import bagward.station.BayId;
import bagward.station.HouseId;
import bagward.station.PlaceClimates;
import bagward.station.Sensor;
import bagward.station.Station;
import bagward.units.Quantity;
import java.time.Instant;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The climate of every place that is asked for, computed once. Used within one pass by one thread. */
final class Places {
    private final Station station;
    private final ReadingSource readings;
    private final TimeGrid grid;
    private final Instant now;
    private final Map<Where, Place> known = new HashMap<>();
    private final Map<Map<Quantity, List<Sensor>>, Place> bySources = new HashMap<>();

    /**
     * @param grid the cells of all places
     * @param now readings after it are not looked at for ages
     */
    Places(Station station, ReadingSource readings, TimeGrid grid, Instant now) {
        this.station = station;
        this.readings = readings;
        this.grid = grid;
        this.now = now;
    }

    /** A house, or a bay of it; bays that are fed by the same sensors share one climate. */
    Place at(HouseId house, Optional<BayId> bay) {
        return known.computeIfAbsent(new Where(house, bay), where -> look(house, bay));
    }

    private Place look(HouseId house, Optional<BayId> bay) {
        Map<Quantity, List<Sensor>> sources = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            sources.put(quantity, PlaceClimates.sensors(station, house, bay, quantity));
        }
        return bySources.computeIfAbsent(
                sources,
                same -> new Place(PlaceClimates.climate(station, house, bay, readings, grid), same, heard(same)));
    }

    private Map<Quantity, Instant> heard(Map<Quantity, List<Sensor>> sources) {
        Map<Quantity, Instant> heard = new EnumMap<>(Quantity.class);
        sources.forEach((quantity, sensors) -> newest(quantity, sensors).ifPresent(at -> heard.put(quantity, at)));
        return heard;
    }

    private Optional<Instant> newest(Quantity quantity, List<Sensor> sensors) {
        return sensors.stream()
                .flatMap(sensor -> readings.newest(new SeriesId(sensor.id(), quantity), now).stream())
                .map(Reading::measuredAt)
                .max(Instant::compareTo);
    }

    private record Where(HouseId house, Optional<BayId> bay) {}
}
