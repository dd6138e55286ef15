package bagward.mould;

import bagward.units.Celsius;
import bagward.units.RelativeHumidity;
import java.util.List;

/**
 * What air means for seed that hangs in it.
 *
 * @param moisture at which seed comes to rest in it, estimated
 * @param growth how fast mould could grow in it
 * @param fungi storage fungi that could grow in it, the one that needs least humidity first
 * @param dryness whether seed becomes as dry in it as it is stored
 * @param keepsHundredRule whether it keeps the rule of {@link HundredRule}
 */
public record SeedAir(
        MoistureRange moisture,
        GrowthClass growth,
        List<StorageFungus> fungi,
        Dryness dryness,
        boolean keepsHundredRule) {
    /** Copies the list. */
    public SeedAir {
        fungi = List.copyOf(fungi);
    }

    /** Judges air of one moment. */
    public static SeedAir of(Celsius temperature, RelativeHumidity humidity, Storage storage) {
        return of(temperature.degrees(), humidity.percent(), storage);
    }

    static SeedAir of(double celsius, double percent, Storage storage) {
        MoistureRange moisture = EquilibriumMoisture.range(celsius, percent, storage.oil());
        return new SeedAir(
                moisture,
                GrowthClass.of(celsius, percent),
                storage.fungiAt(percent),
                moisture.against(storage.stored().highest()),
                HundredRule.keeps(celsius, percent));
    }
}
