package bagward.mould;

/** Whether seed becomes as dry in some air as it is stored. */
public enum Dryness {
    /** Surely. */
    DRY_ENOUGH,
    /** The range of the estimate lies on both sides, or nothing is known from above. */
    PERHAPS,
    /** Surely not. */
    TOO_DAMP
}
