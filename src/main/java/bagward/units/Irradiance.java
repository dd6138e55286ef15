package bagward.units;

/**
 * Radiant power on a level surface.
 *
 * @param wattsPerSquareMetre W m⁻², 0 to 1600 (cloud edges exceed clear sky for minutes)
 */
public record Irradiance(double wattsPerSquareMetre) implements Comparable<Irradiance> {
    /** Refuses what is not finite or cannot be. */
    public Irradiance {
        Checks.within("irradiance", wattsPerSquareMetre, 0, 1600, "W m⁻²");
    }

    @Override
    public int compareTo(Irradiance other) {
        return Double.compare(wattsPerSquareMetre, other.wattsPerSquareMetre);
    }
}
