package bagward.units;

/**
 * A temperature.
 *
 * @param degrees °C, −90 to 100
 */
public record Celsius(double degrees) implements Comparable<Celsius> {
    /** Difference between the Kelvin and the Celsius scale, K. */
    public static final double ZERO_IN_KELVIN = 273.15;

    /** Refuses what no air, leaf or film on a bench can have. */
    public Celsius {
        Checks.within("temperature", degrees, -90, 100, "°C");
    }

    /** From a thermodynamic temperature in K. */
    public static Celsius ofKelvin(double kelvin) {
        return new Celsius(kelvin - ZERO_IN_KELVIN);
    }

    /** Thermodynamic temperature in K. */
    public double kelvin() {
        return degrees + ZERO_IN_KELVIN;
    }

    @Override
    public int compareTo(Celsius other) {
        return Double.compare(degrees, other.degrees);
    }
}
