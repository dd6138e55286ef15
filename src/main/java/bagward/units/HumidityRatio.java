package bagward.units;

/**
 * Mass of water vapour for each mass of dry air.
 *
 * @param kilogramsPerKilogram kg of vapour per kg of dry air, 0 to 10
 */
public record HumidityRatio(double kilogramsPerKilogram) implements Comparable<HumidityRatio> {
    /** Refuses what is not finite or cannot be. */
    public HumidityRatio {
        Checks.within("humidity ratio", kilogramsPerKilogram, 0, 10, "kg/kg");
    }

    @Override
    public int compareTo(HumidityRatio other) {
        return Double.compare(kilogramsPerKilogram, other.kilogramsPerKilogram);
    }
}
