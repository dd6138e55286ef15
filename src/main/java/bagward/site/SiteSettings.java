package bagward.site;

import bagward.bag.BagMaterial;
import bagward.mould.Crop;
import bagward.units.Checks;
import java.util.List;

/**
 * What the site is told by the configuration.
 *
 * @param host address to listen on, "127.0.0.1" for this machine only
 * @param port TCP port, 0 for any free one
 * @param wall how far the wall screen is looked at and how large it is
 * @param materials bag materials to choose from
 * @param crops crops to choose from
 * @param dampLimitPercent limit line of the humidity in charts, %RH
 */
public record SiteSettings(
        String host,
        int port,
        WallScreen wall,
        List<BagMaterial> materials,
        List<Crop> crops,
        double dampLimitPercent) {
    /** Refuses ports and limits that cannot be; copies the lists. */
    public SiteSettings {
        Checks.within("port of the page address", port, 0, 65535, "");
        Checks.within("damp limit", dampLimitPercent, 1, 100, "%RH");
        materials = List.copyOf(materials);
        crops = List.copyOf(crops);
    }
}
