package bagward.pollen;

/** The logistic distribution. */
final class Logistic {
    private Logistic() {}

    /** Share below z, 0 to 1. */
    static double share(double z) {
        return 1 / (1 + Math.exp(-z));
    }

    /** Log odds of a share; infinite at 0 and 1. */
    static double logOdds(double share) {
        return Math.log(share / (1 - share));
    }

    /** Share between two limits; exact in both tails, where the difference of two shares near 1 would be rounded away. */
    static double between(double low, double high) {
        return low > 0 ? share(-low) - share(-high) : share(high) - share(low);
    }

    /** Density at z; 0 at infinity. */
    static double density(double z) {
        return share(z) * share(-z);
    }

    /** Slope of the density at z; 0 at infinity. */
    static double densitySlope(double z) {
        return density(z) * (share(-z) - share(z));
    }
}
