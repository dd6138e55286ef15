package bagward.bag;

/** Something that can be seen of the flowers of a head, and tells how long foreign pollen can still set seed. */
public enum FlowerSign {
    /** Its last flower has opened. */
    LAST_OPENED,
    /** Its petals have dropped. */
    PETALS_DROPPED
}
