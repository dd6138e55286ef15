package bagward.bag;

/** What is done to a seed lot after its harvest. */
public enum DryingStep {
    /** Hung to dry. */
    HUNG,
    /** Taken down, threshed and packed. */
    PACKED
}
