package bagward.bag;

/** How the two parents of a pollination are related. */
public enum PollinationKind {
    /** Pollen of the same plant or line. */
    SELF,
    /** Pollen of a sister plant of the line. */
    SIB,
    /** Pollen of another line. */
    CROSS
}
