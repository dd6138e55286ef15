package bagward.bag;

/** Where a head stands. */
public enum HeadState {
    /** Pollinated, no bag yet. */
    POLLINATED,
    /** A bag is on. */
    BAGGED,
    /** The bag is off, pods ripen. */
    BARE,
    /** Cut as a seed lot. */
    HARVESTED,
    /** Given up. */
    LOST
}
