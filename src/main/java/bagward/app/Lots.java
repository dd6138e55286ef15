package bagward.app;

import bagward.climate.ReadingSource;
import bagward.station.PlaceClimates;
import bagward.watch.LotBook;
import bagward.watch.SensorChecks;
import bagward.watch.Watch;
import java.time.Clock;

/** Wires the book of seed lots. */
final class Lots {
    private Lots() {}

    /** A book on a watch of a configured station; corrections of sensors are taken as they stand at each question. */
    static LotBook of(
            Configuration configuration, Watch watch, ReadingSource readings, SensorChecks checks, Clock clock) {
        return new LotBook(
                watch,
                (house, bay, grid) ->
                        PlaceClimates.climate(configuration.station(), house, bay, checks.corrected(readings), grid),
                configuration.surfaces(),
                configuration.crops().storage(),
                clock);
    }
}
