package bagward.bag;

/** Where a value of the bag climate comes from. */
public enum Origin {
    /** By a sensor that was lent to the bag. */
    MEASURED,
    /** Computed from the house, the light and the material. */
    ESTIMATED
}
