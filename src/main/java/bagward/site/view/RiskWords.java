package bagward.site.view;

import bagward.mould.RiskAssessment;

/** Mould risk in words that never promise that there is none. */
public final class RiskWords {
    private RiskWords() {}

    /** The band: "low estimated risk, look". */
    public static String band(RiskAssessment risk) {
        return switch (risk.band()) {
            case NONE, LOW -> "low estimated risk, look";
            case MODERATE -> "moderate estimated risk";
            case HIGH -> "high estimated risk";
        };
    }

    /** Band, organism, reason and what is not known. */
    public static String inFull(RiskAssessment risk) {
        String organism = risk.organism().isBlank() ? "" : " (" + risk.organism() + ")";
        String reason = risk.reason().isBlank() ? "" : ": " + risk.reason();
        String unknown = risk.unknownHours() < 0.5
                ? ""
                : ". " + Words.oneDecimal(risk.unknownHours()) + " h without data are not counted";
        return Words.sentence(band(risk)) + organism + reason + unknown;
    }
}
