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
    RETURNED_UNACKNOWLEDGED,
    /** Hidden by a person, for a time, with a reason. */
    SHELVED,
    /** Hidden by logic: what the rule depends on is not there, and that has an alarm of its own. */
    SUPPRESSED,
    /** Taken off by a person for maintenance, without a time limit, with a reason. */
    OUT_OF_SERVICE;

    /** Whether it is listed for people. */
    public boolean listed() {
        return this == UNACKNOWLEDGED || this == ACKNOWLEDGED || this == RETURNED_UNACKNOWLEDGED;
    }

    /** Whether it is hidden on purpose, by a person or by design. */
    public boolean setAside() {
        return this == SHELVED || this == SUPPRESSED || this == OUT_OF_SERVICE;
    }

    /** Whether the condition held when last seen and a person is to know. */
    public boolean standing() {
        return this == UNACKNOWLEDGED || this == ACKNOWLEDGED;
    }
}
