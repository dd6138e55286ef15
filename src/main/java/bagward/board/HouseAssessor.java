package bagward.board;

import bagward.climate.Climate;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.station.House;
import bagward.station.PlaceClimates;
import bagward.units.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Looks at the houses as wholes. */
final class HouseAssessor {
    /** Cells of a day line, each half an hour. */
    static final int DAY_CELLS = 48;

    private static final Duration DAY_STEP = Duration.ofMinutes(30);

    private final BoardInputs in;
    private final Places places;
    private final TimeGrid day;

    HouseAssessor(BoardInputs in, Places places) {
        this.in = in;
        this.places = places;
        TimeGrid newest = TimeGrid.covering(in.now(), in.now().plusMillis(1), DAY_STEP);
        this.day = new TimeGrid(newest.start().minus(DAY_STEP.multipliedBy(DAY_CELLS - 1L)), DAY_STEP, DAY_CELLS);
    }

    HouseView look(House house) {
        Place place = places.at(house.id(), Optional.empty());
        Climate lines = PlaceClimates.climate(in.station(), house.id(), Optional.empty(), in.readings(), day);
        return new HouseView(
                house,
                Measures.newest(place, place.climate().temperature(), Quantity.TEMPERATURE, in.now()),
                Measures.newest(place, place.climate().humidity(), Quantity.HUMIDITY, in.now()),
                Measures.newest(place, place.climate().light(), Quantity.LIGHT, in.now()),
                newestReading(house),
                line(lines.temperature()),
                line(lines.humidity()),
                in.knowledge().outlook(house.id(), in.now()),
                in.knowledge().week(house.id()));
    }

    private Optional<Instant> newestReading(House house) {
        return in.station().sensors().stream()
                .filter(sensor -> sensor.house().equals(house.id()) && !sensor.spare())
                .flatMap(sensor -> sensor.series().stream())
                .flatMap(series -> in.readings().newest(series, in.now()).stream())
                .map(reading -> reading.measuredAt())
                .max(Instant::compareTo);
    }

    private static List<Double> line(RegularSeries series) {
        return Arrays.stream(series.toArray()).boxed().toList();
    }
}
