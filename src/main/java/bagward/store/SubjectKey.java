package bagward.store;

import bagward.alarm.Subject;
import bagward.fault.ImpossibleValueException;

/** Reads back what {@link Subject#key()} wrote. */
final class SubjectKey {
    private SubjectKey() {}

    /** The subject of a key. */
    static Subject parse(String key) {
        try {
            return Subject.parse(key);
        } catch (ImpossibleValueException newer) {
            throw new StoreException(
                    "the store holds an alarm about the unknown subject '" + key
                            + "': use the newer Bagward that wrote it",
                    newer);
        }
    }
}
