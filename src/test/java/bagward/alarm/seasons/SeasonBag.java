package bagward.alarm.seasons;

import bagward.bag.BagBelief;
import bagward.bag.BagClimate;
import bagward.climate.Climate;
import bagward.climate.TimeGrid;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/**
 * A bag of a simulated season, a week on its head.
 *
 * @param inside its climate as Bagward estimates it
 * @param truly its climate as a sensor without error would have it
 * @param belief what Bagward believed of it
 * @param truth the true climate itself
 * @param infections when its head was infected in each world; empty if it was not
 */
record SeasonBag(
        BagClimate inside,
        BagClimate truly,
        BagBelief belief,
        Climate truth,
        Map<MouldWorld, Optional<Instant>> infections) {
    TimeGrid grid() {
        return inside.grid();
    }

    Instant putOn() {
        return grid().start();
    }

    Instant takenOff() {
        return grid().end();
    }
}
