package bagward.bag;

/** In how many of a hundred cases an interval holds the truth, and how wide it is for a normal error. */
public enum Coverage {
    /** Eighty of a hundred: outlooks, and water on the film. */
    EIGHTY(80, 1.2816),
    /** Ninety of a hundred: estimates and measured values. */
    NINETY(90, 1.645);

    private final int percent;
    private final double deviations;

    Coverage(int percent, double deviations) {
        this.percent = percent;
        this.deviations = deviations;
    }

    /** Cases in a hundred. */
    public int percent() {
        return percent;
    }

    /** Standard deviations from the middle to each end of the interval of a normal error. */
    public double deviations() {
        return deviations;
    }
}
