package bagward.alarm;

import bagward.bag.CropId;
import bagward.bag.MaterialId;
import bagward.station.HouseId;
import java.util.Optional;

/**
 * What the limit of a rule may depend on.
 *
 * @param house where the thing is
 * @param material of the bag; empty for what is no bag
 * @param crop of the head under the bag; empty for what is no bag
 */
public record Circumstances(HouseId house, Optional<MaterialId> material, Optional<CropId> crop) {
    /** Those of a thing that is no bag. */
    public static Circumstances of(HouseId house) {
        return new Circumstances(house, Optional.empty(), Optional.empty());
    }
}
