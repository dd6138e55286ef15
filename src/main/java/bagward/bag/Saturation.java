package bagward.bag;

/** Saturation vapour pressure over water, FAO-56 equation 11, with the two short forms that the balance needs. */
final class Saturation {
    private static final double A = 17.27;
    private static final double B = 237.3;

    private Saturation() {}

    /** kPa at a temperature in °C. */
    static double kilopascals(double celsius) {
        return 0.6108 * Math.exp(A * celsius / (celsius + B));
    }

    /** es(T − cooling)/es(T), 0 to 1; T in °C, cooling in K. */
    static double ratio(double celsius, double cooling) {
        return Math.exp(-A * B * cooling / ((celsius + B) * (celsius - cooling + B)));
    }

    /** Relative change of the saturation pressure with temperature, per K, at a temperature in °C (equation 13). */
    static double growth(double celsius) {
        double from = celsius + B;
        return A * B / (from * from);
    }
}
