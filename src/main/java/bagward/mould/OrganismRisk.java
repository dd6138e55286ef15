package bagward.mould;

/**
 * What one organism makes of a bag, since it was put on.
 *
 * @param organism the row of the table
 * @param band band by the best humidity value
 * @param score worst score, on the scale of the organism's bands
 * @param reached when each band was first reached, by the best value
 * @param reason the score in numbers; empty if nothing was wet
 * @param certain band even if the lower end of the humidity interval is true
 * @param possible band if its upper end is true
 */
public record OrganismRisk(
        Organism organism,
        RiskBand band,
        double score,
        BandTimes reached,
        String reason,
        RiskBand certain,
        RiskBand possible) {}
