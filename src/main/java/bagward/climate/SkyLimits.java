package bagward.climate;

import bagward.fault.ImpossibleValueException;
import bagward.units.Checks;

/**
 * From which clear-sky index on it is sunny, and below which it is cloudy; settings, since no official limits exist.
 *
 * @param cloudyBelow clear-sky index, 0 to 1.5
 * @param sunnyFrom clear-sky index, not below the other
 */
public record SkyLimits(double cloudyBelow, double sunnyFrom) {
    /**
     * Limits from the share of bright sunshine: FAO-56 equation 35 over equation 36 makes the index 1/3 + 2/3 n/N, so
     * 0.467 stands for one fifth of the possible sunshine and 0.867 for four fifths. The choice of the fifths is ours.
     */
    public static final SkyLimits USUAL = new SkyLimits(0.467, 0.867);

    /** Refuses limits out of order. */
    public SkyLimits {
        Checks.within("limit of a cloudy sky", cloudyBelow, 0, 1.5, "");
        Checks.within("limit of a sunny sky", sunnyFrom, 0, 1.5, "");
        if (sunnyFrom < cloudyBelow) {
            throw new ImpossibleValueException("sunny from " + sunnyFrom + " and cloudy below " + cloudyBelow
                    + " overlap: sunny must begin at or above the end of cloudy");
        }
    }

    /** The sky of a clear-sky index. */
    public Sky judge(double clearSkyIndex) {
        if (clearSkyIndex < cloudyBelow) {
            return Sky.CLOUDY;
        }
        return clearSkyIndex >= sunnyFrom ? Sky.SUNNY : Sky.MIXED;
    }
}
