package bagward.station;

import bagward.climate.SensorId;
import bagward.climate.SeriesId;
import bagward.units.Quantity;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A device that measures in a house.
 *
 * @param id unique name
 * @param name as people call it
 * @param house where it hangs
 * @param bay the bay it stands for; empty if it stands for the whole house
 * @param spare whether it is a spare that can be lent to a bag; a spare one never counts for the house climate
 * @param quantities what it measures
 * @param expectedEvery the interval at which readings are expected
 */
public record Sensor(
        SensorId id,
        String name,
        HouseId house,
        Optional<BayId> bay,
        boolean spare,
        Set<Quantity> quantities,
        Duration expectedEvery) {
    /** Copies the set. */
    public Sensor {
        quantities = Set.copyOf(quantities);
    }

    /** Its series that tell about the air, in the order of the quantities; by these it is missed. */
    public List<SeriesId> climateSeries() {
        return series().stream().filter(s -> s.quantity().isClimate()).toList();
    }

    /** Its series, in the order of the quantities. */
    public List<SeriesId> series() {
        return quantities.stream().sorted().map(q -> new SeriesId(id, q)).toList();
    }
}
