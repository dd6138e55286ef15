package bagward.site.api;

import bagward.mould.RiskAssessment;

/**
 * Mould risk in the interface.
 *
 * @param band "none", "low", "moderate" or "high"; "none" means that nothing was counted, not that there is no mould
 * @param organism the worst organism
 * @param reason in numbers
 * @param wetHours hours wet since the bag was put on
 * @param unknownHours hours without data since then
 */
public record RiskAnswer(String band, String organism, String reason, double wetHours, double unknownHours) {
    static RiskAnswer of(RiskAssessment risk) {
        return new RiskAnswer(
                BagAnswer.word(risk.band()), risk.organism(), risk.reason(), risk.wetHours(), risk.unknownHours());
    }
}
