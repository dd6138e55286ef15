package bagward.mould;

import bagward.climate.Climate;
import bagward.climate.TimeGrid;
import bagward.station.BayId;
import bagward.station.HouseId;
import java.util.Optional;

/** Where the climate comes from that a seed lot went through. */
@FunctionalInterface
public interface LotAir {
    /**
     * The climate of a place.
     *
     * @param bay a bay of the house; empty for the house as a whole
     * @param grid the cells of the result
     */
    Climate of(HouseId house, Optional<BayId> bay, TimeGrid grid);
}
