package bagward.mould;

import bagward.fault.ImpossibleValueException;

/**
 * Where the bands of a score begin.
 *
 * @param low above this it is low, at or below it none
 * @param moderate from this on
 * @param high from this on; infinite for an organism that is never a high risk by itself
 */
public record BandLimits(double low, double moderate, double high) {
    /**
     * Bands of a score that is 1 when the spell is as long as the organism needs. Our choice: any wet time is low, half
     * of the needed time moderate, all of it high.
     */
    public static final BandLimits OF_NEED = new BandLimits(0, 0.5, 1);

    /**
     * Bands of a score that is 1 when as many wet hours have passed as infect a fifth of well inoculated parts. Nobody
     * inoculates a bag, so that is moderate and three times as long is high: from the 4 h at which Alternaria brassicae
     * begins to infect, severity rises up to 12 h (Hong and Fitt 1995, Annals of Applied Biology 127:283-295, abstract).
     */
    public static final BandLimits OF_INFECTION = new BandLimits(0, 1, 3);

    /** Refuses limits that are not in order. */
    public BandLimits {
        if (!(low <= moderate && moderate <= high && Double.isFinite(low) && Double.isFinite(moderate))) {
            throw new ImpossibleValueException("band limits " + low + ", " + moderate + ", " + high
                    + " are impossible: give finite numbers in rising order, high may be left out");
        }
    }

    /** Whether a high risk can be reached at all. */
    public boolean canBeHigh() {
        return Double.isFinite(high);
    }

    /** The band of a score. */
    public RiskBand bandOf(double score) {
        if (score >= high) {
            return RiskBand.HIGH;
        }
        if (score >= moderate) {
            return RiskBand.MODERATE;
        }
        return score > low ? RiskBand.LOW : RiskBand.NONE;
    }
}
