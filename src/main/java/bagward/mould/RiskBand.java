package bagward.mould;

/** Estimated mould risk, lowest first. NONE is never shown as "no mould": it reads "low estimated risk, look". */
public enum RiskBand {
    /** Nothing counted so far. */
    NONE,
    /** Below the first limit. */
    LOW,
    /** Near the limit. */
    MODERATE,
    /** At or beyond the limit. */
    HIGH
}
