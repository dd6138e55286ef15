package bagward.alarm;

import bagward.bag.MaterialId;
import bagward.station.HouseId;
import java.util.Optional;

/**
 * A limit that a rule has in one house or for one bag material.
 *
 * @param house only there; everywhere if empty
 * @param material only for bags of it; for all, and for what is no bag, if empty
 * @param limit in the unit of the rule's kind
 */
public record OtherLimit(Optional<HouseId> house, Optional<MaterialId> material, double limit) {
    /** Whether it is for a thing in a house; the material is that of the bag, empty for what is no bag. */
    boolean fits(HouseId inHouse, Optional<MaterialId> ofMaterial) {
        return house.map(inHouse::equals).orElse(true)
                && material.map(m -> ofMaterial.filter(m::equals).isPresent()).orElse(true);
    }
}
