package bagward.watch;

import bagward.board.BoardInputs;
import bagward.climate.Climate;
import bagward.climate.Span;
import bagward.climate.TimeGrid;
import bagward.mould.SeedStay;
import bagward.mould.Storage;
import bagward.station.House;
import bagward.station.HouseId;
import bagward.station.PlaceClimates;
import java.time.Duration;
import java.util.Optional;

/** Looks back at drying places. */
final class PlaceStays {
    private static final Duration STEP = Duration.ofMinutes(1);

    private PlaceStays() {}

    /**
     * A place over a stretch of time.
     *
     * @param in station, corrected readings and what is known of keeping seed
     * @param place its name
     * @param span the stretch; what lies after now is unknown
     * @return empty if there is no drying place of that name
     */
    static Optional<PlaceStay> of(BoardInputs in, HouseId place, Span span) {
        return in.station().findHouse(place).filter(House::isForDrying).map(house -> {
            TimeGrid grid = TimeGrid.covering(span.from(), span.to(), STEP);
            Climate air = PlaceClimates.climate(in.station(), place, Optional.empty(), in.readings(), grid);
            Storage storage = in.crops().storage();
            return new PlaceStay(house, span, air, SeedStay.over(air, span, storage), storage);
        });
    }
}
