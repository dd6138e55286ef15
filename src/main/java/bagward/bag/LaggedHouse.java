package bagward.bag;

/** The house as a bag of a response time feels it: each series through the same first-order lag, cell by cell. */
final class LaggedHouse {
    private LaggedHouse() {}

    /**
     * Means over each cell of the lagged series.
     *
     * @param values the series, NaN for gaps; the lag starts anew after each
     * @param stepMinutes length of a cell
     * @param tauMinutes response time
     */
    static double[] lagged(double[] values, double stepMinutes, double tauMinutes) {
        double covered = -Math.expm1(-stepMinutes / tauMinutes);
        double meanLeft = covered * tauMinutes / stepMinutes;
        double[] means = new double[values.length];
        double end = Double.NaN;
        for (int i = 0; i < values.length; i++) {
            double value = values[i];
            double start = Double.isNaN(end) ? value : end;
            means[i] = value + (start - value) * meanLeft;
            end = start + (value - start) * covered;
        }
        return means;
    }
}
