package bagward.units;

import java.util.Locale;

/** Numbers with a fixed count of decimal places, many times as fast as a format string and with the same result. */
public final class Decimals {
    private static final double[] POWERS = {1, 10, 100, 1000};

    /** Above it a scaled number no longer shows on which side of a tie it lies. */
    private static final double LARGEST = 1e9;

    /** So near to a tie the decimal digits of the number decide, not its binary ones. */
    private static final double TIE = 1e-6;

    private Decimals() {}

    /**
     * What {@code %.nf} gives in the root locale: rounded half up, with a point, a minus sign also before a zero.
     *
     * @param value any number
     * @param places digits after the point, 0 or more
     */
    public static String fixed(double value, int places) {
        if (places >= POWERS.length) {
            return formatted(value, places);
        }
        double scaled = Math.abs(value) * POWERS[places];
        double whole = Math.floor(scaled);
        double rest = scaled - whole;
        if (!(scaled < LARGEST) || Math.abs(rest - 0.5) < TIE) {
            return formatted(value, places);
        }
        long rounded = (long) whole + (rest > 0.5 ? 1 : 0);
        return (Double.compare(value, 0) < 0 ? "-" : "") + pointed(rounded, places);
    }

    private static String pointed(long scaled, int places) {
        if (places == 0) {
            return Long.toString(scaled);
        }
        long power = (long) POWERS[places];
        String after = Long.toString(scaled % power);
        return scaled / power + "." + "0".repeat(places - after.length()) + after;
    }

    private static String formatted(double value, int places) {
        return String.format(Locale.ROOT, "%." + places + "f", value);
    }
}
