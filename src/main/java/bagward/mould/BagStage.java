package bagward.mould;

/** Where a bag stands in its time. */
public enum BagStage {
    /** Foreign pollen could still set seed. */
    STAYS_ON,
    /** It may come off if there is a reason; it is not due yet. */
    MAY_COME_OFF,
    /** Its time is over. */
    DUE,
    /** Its time is over by at least one step. */
    OVERDUE
}
