package bagward.mould;

/**
 * Risk of a bag with its reason.
 *
 * @param band the worst over all organisms
 * @param organism name of the worst one
 * @param reason in numbers: wet for how long, at what temperature, needed how long
 * @param wetHours hours wet since the bag was put on
 * @param unknownHours hours without data since the bag was put on
 */
public record RiskAssessment(RiskBand band, String organism, String reason, double wetHours, double unknownHours) {}
