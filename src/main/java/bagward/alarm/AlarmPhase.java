package bagward.alarm;

/** States of an alarm, in the terms of ISA-18.2 and IEC 62682; PENDING is a running on-delay. */
public enum AlarmPhase {
    /** No condition. */
    NORMAL,
    /** The condition holds, the on-delay runs. */
    PENDING,
    /** The condition holds, nobody has confirmed. */
    UNACKNOWLEDGED,
    /** The condition holds, a person has confirmed. */
    ACKNOWLEDGED,
    /** The condition is gone before anyone confirmed. */
    RETURNED_UNACKNOWLEDGED;

    /** Whether it is listed for people. */
    public boolean listed() {
        return this == UNACKNOWLEDGED || this == ACKNOWLEDGED || this == RETURNED_UNACKNOWLEDGED;
    }
}
