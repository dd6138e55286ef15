package bagward.station;

import java.util.List;
import java.util.Optional;

/**
 * A greenhouse compartment.
 *
 * @param id short name, unique in the station
 * @param name as people call it
 * @param bays its bays in walking order
 */
public record House(HouseId id, String name, List<Bay> bays) {
    /** Copies the list. */
    public House {
        bays = List.copyOf(bays);
    }

    /** The bay of a name. */
    public Optional<Bay> findBay(BayId bay) {
        return bays.stream().filter(b -> b.id().equals(bay)).findFirst();
    }
}
