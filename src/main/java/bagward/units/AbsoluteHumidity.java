package bagward.units;

/**
 * Mass of water vapour in a volume of air, or a difference of two such masses (humidity deficit).
 *
 * @param gramsPerCubicMetre g m⁻³, 0 to 700 (saturated air at 100 °C holds about 600)
 */
public record AbsoluteHumidity(double gramsPerCubicMetre) implements Comparable<AbsoluteHumidity> {
    /** Refuses what is not finite or cannot be. */
    public AbsoluteHumidity {
        Checks.within("absolute humidity", gramsPerCubicMetre, 0, 700, "g m⁻³");
    }

    @Override
    public int compareTo(AbsoluteHumidity other) {
        return Double.compare(gramsPerCubicMetre, other.gramsPerCubicMetre);
    }
}
