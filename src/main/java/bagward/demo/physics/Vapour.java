package bagward.demo.physics;

/** Moist air of the demo: the Magnus form of the World Meteorological Organization, and vapour as a density. */
final class Vapour {
    /** Heat to evaporate water, J kg⁻¹ (value from memory, near 20 °C). */
    static final double LATENT_HEAT = 2.45e6;

    /** Heat capacity of air by volume, J m⁻³ K⁻¹ (value from memory, near 20 °C). */
    static final double AIR_HEAT = 1200;

    private static final double GAS_CONSTANT = 461.5;

    private Vapour() {}

    /** Saturation vapour pressure over water, Pa (WMO-No. 8, annex 4.B; coefficients from memory). */
    static double saturationPascals(double celsius) {
        return 611.2 * Math.exp(17.62 * celsius / (243.12 + celsius));
    }

    /** Vapour density at saturation, kg m⁻³. */
    static double saturationDensity(double celsius) {
        return density(saturationPascals(celsius), celsius);
    }

    /** Vapour density from vapour pressure, kg m⁻³ (ideal gas). */
    static double density(double pascals, double celsius) {
        return pascals / (GAS_CONSTANT * (celsius + 273.15));
    }

    /** Relative humidity, %RH; above 100 if the air is supersaturated. */
    static double percent(double density, double celsius) {
        return 100 * density / saturationDensity(celsius);
    }
}
