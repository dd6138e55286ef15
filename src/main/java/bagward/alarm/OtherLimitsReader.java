package bagward.alarm;

import bagward.bag.CropId;
import bagward.bag.MaterialId;
import bagward.document.Section;
import bagward.station.HouseId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * Reads the limits that a rule has for single houses, bag materials and crops.
 *
 * @param houses whether there is such a house
 * @param materials whether there is such a bag material
 * @param crops whether there is such a crop
 */
record OtherLimitsReader(Predicate<HouseId> houses, Predicate<MaterialId> materials, Predicate<CropId> crops) {
    /**
     * The limits of a rule; faults go to the section.
     *
     * @param rule an entry that has other-limits
     * @param limit reads the limit of one of them
     */
    List<OtherLimit> read(Section rule, ToDoubleFunction<Section> limit) {
        List<OtherLimit> others = new ArrayList<>();
        for (Section other : rule.sections("other-limits", 1)) {
            Optional<HouseId> house = other.findValue("house", HouseId::new);
            Optional<MaterialId> material = other.findValue("material", MaterialId::new);
            Optional<CropId> crop = other.findValue("crop", CropId::new);
            house.filter(houses.negate()).ifPresent(h -> other.refuse("house", "must be the id of a house"));
            material.filter(materials.negate())
                    .ifPresent(m -> other.refuse("material", "must be the id of a bag material"));
            crop.filter(crops.negate()).ifPresent(c -> other.refuse("crop", "must be the id of a crop"));
            if (!other.has("house") && !other.has("material") && !other.has("crop")) {
                other.refuse(
                        "house",
                        "must be given, or a material or a crop: change the limit of the rule itself otherwise");
            }
            double value = limit.applyAsDouble(other);
            other.make(() -> new OtherLimit(house, material, crop, value)).ifPresent(others::add);
        }
        return others;
    }
}
