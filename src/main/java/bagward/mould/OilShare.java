package bagward.mould;

import bagward.fault.ImpossibleValueException;

/**
 * Oil in dry seed, as a share of its mass; oil takes up no water, so oily seed is drier in the same air.
 *
 * @param low little oil, 0 to 0.7
 * @param middle the best value
 * @param high much oil
 * @param source where they come from
 */
public record OilShare(double low, double middle, double high, String source) {
    private static final double HIGHEST = 0.7;

    /** Refuses shares out of order, below 0 and above 0.7. */
    public OilShare {
        if (!(low >= 0 && low <= middle && middle <= high && high <= HIGHEST)) {
            throw new ImpossibleValueException("oil shares " + low + ", " + middle + ", " + high
                    + " are impossible: low, middle and high must not fall and lie within 0 to " + HIGHEST);
        }
    }
}
