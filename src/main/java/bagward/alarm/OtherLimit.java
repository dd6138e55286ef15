package bagward.alarm;

import bagward.bag.CropId;
import bagward.bag.MaterialId;
import bagward.station.HouseId;
import java.util.Optional;

/**
 * A limit that a rule has in one house, for one bag material or for one crop; where several are named all must fit.
 *
 * @param house only there; everywhere if empty
 * @param material only for bags of it; for all, and for what is no bag, if empty
 * @param crop only for heads of it; for all, and for what is no bag, if empty
 * @param limit in the unit of the rule's kind
 */
public record OtherLimit(Optional<HouseId> house, Optional<MaterialId> material, Optional<CropId> crop, double limit) {
    boolean fits(Circumstances at) {
        return house.map(at.house()::equals).orElse(true)
                && (material.isEmpty() || material.equals(at.material()))
                && (crop.isEmpty() || crop.equals(at.crop()));
    }
}
