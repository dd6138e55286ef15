package bagward.mould;

/**
 * What the mould index grows on: rows of the table of Ojanen, Viitanen, Peuhkuri and others (2010), and the original pine
 * of Hukka and Viitanen (1999). The table was read in two public codes that agree, not in the papers; the factor of
 * decline is from memory.
 */
public enum Substrate {
    /** Pine sapwood as in the paper of 1999, where growth after the first microscopic one depends on the climate. */
    ORIGINAL_PINE(1, Double.NaN, 1, 7, 2, 80, 1),
    /** Pine sapwood; taken here for paper, glassine and dying petals. */
    VERY_SENSITIVE(1, 2, 1, 7, 2, 80, 1),
    /** Glued boards, paper-faced boards, spruce. */
    SENSITIVE(0.578, 0.386, 0.3, 6, 1, 80, 0.5),
    /** Concrete, glass and polyester wool. */
    MEDIUM_RESISTANT(0.072, 0.097, 0, 5, 1.5, 85, 0.25),
    /** Polished plastic; taken here for clean film. */
    RESISTANT(0.033, 0.014, 0, 3, 1, 85, 0.1);

    private final double earlyFactor;
    private final double lateFactor;
    private final double constant;
    private final double linear;
    private final double square;
    private final double lowestHumidity;
    private final double declineFactor;

    Substrate(
            double earlyFactor,
            double lateFactor,
            double constant,
            double linear,
            double square,
            double lowestHumidity,
            double declineFactor) {
        this.earlyFactor = earlyFactor;
        this.lateFactor = lateFactor;
        this.constant = constant;
        this.linear = linear;
        this.square = square;
        this.lowestHumidity = lowestHumidity;
        this.declineFactor = declineFactor;
    }

    /**
     * Humidity below which nothing grows.
     *
     * @param celsius °C
     * @return %RH
     */
    public double criticalHumidity(double celsius) {
        double curve = celsius <= 20
                ? ((-0.00267 * celsius + 0.160) * celsius - 3.13) * celsius + 100
                : Double.NEGATIVE_INFINITY;
        return Math.max(curve, lowestHumidity);
    }

    /**
     * The index that growth comes to rest at.
     *
     * @param celsius °C, above 0
     * @param percent %RH
     */
    public double highestIndex(double celsius, double percent) {
        double critical = criticalHumidity(celsius);
        double excess = (critical - percent) / (critical - 100);
        return constant + (linear - square * excess) * excess;
    }

    /** Intensity of growth k1 at an index. */
    double intensity(double index, double celsius, double percent) {
        if (index < 1) {
            return earlyFactor;
        }
        return this == ORIGINAL_PINE ? GrowthIndex.originalLateIntensity(celsius, percent) : lateFactor;
    }

    /** Factor of the decline in dry time. */
    double declineFactor() {
        return declineFactor;
    }
}
