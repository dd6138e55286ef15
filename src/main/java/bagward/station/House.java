package bagward.station;

import bagward.fault.ImpossibleValueException;
import java.util.List;
import java.util.Optional;

/**
 * A greenhouse compartment, or a place in which seed dries.
 *
 * @param id short name, unique in the station
 * @param name as people call it
 * @param bays its bays in walking order; none where seed dries
 * @param use what it is for
 */
public record House(HouseId id, String name, List<Bay> bays, HouseUse use) {
    /** Copies the list; refuses bays where seed dries. */
    public House {
        bays = List.copyOf(bays);
        if (use == HouseUse.DRYING && !bays.isEmpty()) {
            throw new ImpossibleValueException(
                    "bays in the drying place " + id + " are impossible: no bags are put on there");
        }
    }

    /** A house in which plants grow. */
    public House(HouseId id, String name, List<Bay> bays) {
        this(id, name, bays, HouseUse.GROWING);
    }

    /** A place in which seed dries. */
    public static House drying(HouseId id, String name) {
        return new House(id, name, List.of(), HouseUse.DRYING);
    }

    /** Whether seed dries in it. */
    public boolean isForDrying() {
        return use == HouseUse.DRYING;
    }

    /** The bay of a name. */
    public Optional<Bay> findBay(BayId bay) {
        return bays.stream().filter(b -> b.id().equals(bay)).findFirst();
    }
}
