package bagward.bag;

import bagward.climate.Light;

/** Where day and night part for a bag, by the light that falls on it. */
final class Daylight {
    /**
     * Global light, W m⁻², from which the head counts as fully awake (pores open, no net cooling to the cover). A prior:
     * about 120 µmol m⁻² s⁻¹, where the pores of most leaves begin to open.
     */
    private static final double FULL_DAY = 60;

    private Daylight() {}

    /** Global light, W m⁻², of a photon flux density, µmol m⁻² s⁻¹; small negative readings count as dark. */
    static double global(double photons) {
        return Math.max(0, photons) / Light.MICROMOLES_PER_GLOBAL_WATT;
    }

    /** Share of day, 0 in the dark to 1, at a global light in W m⁻². */
    static double share(double global) {
        return Math.min(1, global / FULL_DAY);
    }
}
