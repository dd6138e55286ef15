package bagward.units;

/**
 * A pressure: vapour pressure, vapour pressure deficit or air pressure.
 *
 * @param value Pa, 0 to 200 000
 */
public record Pascal(double value) implements Comparable<Pascal> {
    /** Refuses negative and absurd pressures. */
    public Pascal {
        Checks.within("pressure", value, 0, 200_000, "Pa");
    }

    /** From kPa. */
    public static Pascal ofKilopascals(double kilopascals) {
        return new Pascal(kilopascals * 1000);
    }

    /** In kPa. */
    public double kilopascals() {
        return value / 1000;
    }

    @Override
    public int compareTo(Pascal other) {
        return Double.compare(value, other.value);
    }
}
