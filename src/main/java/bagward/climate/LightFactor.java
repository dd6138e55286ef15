package bagward.climate;

import bagward.units.Checks;

/**
 * How many lux one µmol m⁻² s⁻¹ of photosynthetic light makes, for one kind of light; a setting of each lux sensor.
 *
 * @param luxPerMicromole lx per µmol m⁻² s⁻¹, above 0 and at most 147.2, which light of 555 nm would have (683 lm W⁻¹
 *     at 4.639 µmol J⁻¹)
 * @param source where the number comes from, shown with every value made with it
 */
public record LightFactor(double luxPerMicromole, String source) {
    /** Refuses factors that no light can have. */
    public LightFactor {
        Checks.within("light factor", luxPerMicromole, 1, 147.2, "lx per µmol m⁻² s⁻¹");
    }
}
