package bagward.board;

import bagward.bag.TagCode;
import bagward.station.Sensor;
import bagward.units.Quantity;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/**
 * A sensor on the board.
 *
 * @param sensor the sensor
 * @param newest newest value of each quantity that was ever heard
 * @param heardAt when its newest reading was measured; empty if never
 * @param silent whether it was not heard for too long
 * @param offlineSince since when it is offline, as its gateway or the broker said; empty if nobody said so
 * @param lentTo the head in whose bag it hangs
 */
public record SensorView(
        Sensor sensor,
        Map<Quantity, Measure> newest,
        Optional<Instant> heardAt,
        boolean silent,
        Optional<Instant> offlineSince,
        Optional<TagCode> lentTo) {
    /** Copies the map. */
    public SensorView {
        newest = Map.copyOf(newest);
    }
}
