package bagward.mould;

import bagward.bag.MaterialId;
import java.util.Map;

/**
 * What stands for pods and for bags in the mould index: {@code seeds/surfaces.yaml}.
 *
 * @param pods ripening and dry pods with their seed
 * @param bags bags by material
 * @param otherBags bags of materials that are not listed
 */
public record Surfaces(Surface pods, Map<MaterialId, Surface> bags, Surface otherBags) {
    /** Copies the map. */
    public Surfaces {
        bags = Map.copyOf(bags);
    }

    /** What stands for a bag of a material. */
    public Surface of(MaterialId material) {
        return bags.getOrDefault(material, otherBags);
    }
}
