package bagward.units;

/**
 * Water in seed.
 *
 * @param percent share of the moist seed's mass (wet basis, as seed is traded), %, 0 to 95
 */
public record SeedMoisture(double percent) implements Comparable<SeedMoisture> {
    /** Refuses what is not finite or cannot be. */
    public SeedMoisture {
        Checks.within("seed moisture", percent, 0, 95, "% of the moist seed");
    }

    /** From water as a share of the mass of the dry seed, %. */
    public static SeedMoisture ofDryBasis(double percent) {
        return new SeedMoisture(100 * percent / (100 + percent));
    }

    /** As a share of the mass of the dry seed, %. */
    public double dryBasisPercent() {
        return 100 * percent / (100 - percent);
    }

    @Override
    public int compareTo(SeedMoisture other) {
        return Double.compare(percent, other.percent);
    }
}
