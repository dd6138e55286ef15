package bagward.board;

import bagward.climate.Climate;
import bagward.climate.TimeGrid;
import bagward.station.Sensor;
import bagward.units.Quantity;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A house or bay with its climate.
 *
 * @param climate on the grid of the pass
 * @param sources sensors that each quantity comes from
 * @param heard the newest reading of each quantity
 */
record Place(Climate climate, Map<Quantity, List<Sensor>> sources, Map<Quantity, Instant> heard) {
    /** The climate from the cell that holds an instant on, or all of it. */
    Climate since(Instant from) {
        TimeGrid grid = climate.grid();
        int first = Math.max(0, Math.min(grid.size(), grid.indexOf(from)));
        return first == 0 ? climate : climate.part(first, grid.size());
    }

    /** When a quantity was last heard here. */
    Optional<Instant> heardAt(Quantity quantity) {
        return Optional.ofNullable(heard.get(quantity));
    }
}
