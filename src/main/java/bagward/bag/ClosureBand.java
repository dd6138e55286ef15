package bagward.bag;

/**
 * What the spread of a closure does to the dryness 100 − RH, which goes with 1 − f: the factors at both ends of the 90 %
 * interval. The spread is taken on the logit of f, so that the interval never leaves 0 to 1.
 *
 * @param drier factor of the dryness at the low end of f, 1 or more
 * @param damper factor at the high end, 0 to 1
 */
record ClosureBand(double drier, double damper) {
    /** f is kept this far from 0 and 1, where its logit ends. */
    private static final double EDGE = 0.005;

    static ClosureBand of(Spread closure) {
        double f = Math.min(1 - EDGE, Math.max(EDGE, closure.mean()));
        double logit = Math.log(f / (1 - f));
        double reach = Coverage.NINETY.deviations() * closure.deviation() / (f * (1 - f));
        double low = 1 / (1 + Math.exp(-(logit - reach)));
        double high = 1 / (1 + Math.exp(-(logit + reach)));
        return new ClosureBand((1 - low) / (1 - f), (1 - high) / (1 - f));
    }
}
