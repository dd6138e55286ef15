package bagward.watch;

import bagward.alarm.Rule;
import bagward.bag.BagMaterial;
import bagward.bag.MaterialId;
import bagward.mould.Organism;
import bagward.station.Station;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What the watch knows from its configuration.
 *
 * @param station houses and sensors
 * @param materials bag materials
 * @param rules alarm rules
 * @param organisms the mould table
 */
public record Knowledge(Station station, List<BagMaterial> materials, List<Rule> rules, List<Organism> organisms) {
    /** Copies the lists. */
    public Knowledge {
        materials = List.copyOf(materials);
        rules = List.copyOf(rules);
        organisms = List.copyOf(organisms);
    }

    Map<MaterialId, BagMaterial> materialsById() {
        return materials.stream().collect(Collectors.toMap(BagMaterial::id, Function.identity()));
    }
}
