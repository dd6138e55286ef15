package bagward.mould;

/**
 * How fast mould could grow in air without liquid water, on building material that feeds it well, in classes between
 * the isopleths of Zeng and others (2023, Building Services Engineering Research and Technology 44:63-79, read through a
 * public code): RH/100 = 0.02633 cosh(0.10083 (T − 30)) + c. Seed is not wallpaper: the class ranks climates, it does not
 * predict millimetres.
 *
 * <p>The lines were checked from 5 to 30 °C. Colder air is held against the line at 5 °C and warmer air against that at
 * 30 °C, where each line is lowest at its end: that may call growth where there is none, not the other way round.
 */
public enum GrowthClass {
    /** Below the lowest line. */
    NONE(Double.NEGATIVE_INFINITY, "no growth"),
    /** From the line of no growth on. */
    TRACE(0.7153, "under 0.1 mm a day"),
    /** From the line of 0.1 mm a day on. */
    VERY_SLOW(0.7300, "0.1 to 0.5 mm a day"),
    /** From the line of 0.5 mm a day on. */
    SLOW(0.7675, "0.5 to 1 mm a day"),
    /** From the line of 1 mm a day on. */
    STEADY(0.7950, "1 to 2 mm a day"),
    /** From the line of 2 mm a day on. */
    QUICK(0.8250, "2 to 3 mm a day"),
    /** From the line of 3 mm a day on. */
    FAST(0.8502, "3 to 4 mm a day"),
    /** From the line of 4 mm a day on. */
    VERY_FAST(0.8701, "4 mm a day or more");

    private static final double COLDEST = 5;
    private static final double WARMEST = 30;

    private final double constant;
    private final String words;

    GrowthClass(double constant, String words) {
        this.constant = constant;
        this.words = words;
    }

    /** The class of a climate. */
    public static GrowthClass of(double celsius, double percent) {
        GrowthClass highest = NONE;
        for (GrowthClass next : values()) {
            highest = percent >= next.fromPercent(celsius) ? next : highest;
        }
        return highest;
    }

    /** The isopleth at which the class begins, %RH; above 100 where it cannot be reached. */
    public double fromPercent(double celsius) {
        double within = Math.min(WARMEST, Math.max(COLDEST, celsius));
        return 100 * (0.02633 * Math.cosh(0.10083 * (within - WARMEST)) + constant);
    }

    /** The growth between its lines, in words. */
    public String words() {
        return words;
    }
}
