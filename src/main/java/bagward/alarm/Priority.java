package bagward.alarm;

/** How much an alarm matters, lowest first; few are HIGH. */
public enum Priority {
    /** When you come by. */
    LOW,
    /** Today. */
    MEDIUM,
    /** Now. */
    HIGH
}
