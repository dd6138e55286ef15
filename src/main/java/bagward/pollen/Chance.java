package bagward.pollen;

/**
 * The chance of clear or plentiful pollen.
 *
 * @param probability 0 to 1
 * @param interval its interval, within 0 to 1
 * @param basis what it rests on
 */
public record Chance(double probability, Interval interval, Basis basis) {
    /** What a chance rests on. */
    public enum Basis {
        /** A guess of ours, before enough days were scored here. */
        PRIOR,
        /** The scores of this house. */
        LEARNT
    }

    /** A chance from log odds and their interval. */
    static Chance ofLogOdds(double logOdds, Interval band, Basis basis) {
        Interval shares = new Interval(Logistic.share(band.low()), Logistic.share(band.high()), band.level());
        return new Chance(Logistic.share(logOdds), shares, basis);
    }
}
