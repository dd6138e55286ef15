package bagward.units;

/**
 * Light as the human eye weighs it.
 *
 * @param lux lx, 0 to 150 000 (full sun is about 108 000)
 */
public record Illuminance(double lux) implements Comparable<Illuminance> {
    /** Refuses what is not finite or cannot be. */
    public Illuminance {
        Checks.within("illuminance", lux, 0, 150_000, "lx");
    }

    @Override
    public int compareTo(Illuminance other) {
        return Double.compare(lux, other.lux);
    }
}
