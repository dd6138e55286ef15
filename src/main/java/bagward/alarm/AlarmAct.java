package bagward.alarm;

import java.time.Instant;

/** What a person does with an alarm beside confirming it; see {@link AlarmActs} for what is allowed. */
public sealed interface AlarmAct {
    /** Which alarm. */
    AlarmKey key();

    /** Who does it. */
    String by();

    /**
     * The state after it.
     *
     * @throws bagward.fault.RefusedInputException with every fault, if it is not allowed
     */
    Step on(AlarmBook book, Instant now);

    /**
     * Hides a listed alarm for a time.
     *
     * @param until when it comes back by itself
     * @param why the reason
     */
    record Shelve(AlarmKey key, String by, Instant until, String why) implements AlarmAct {
        @Override
        public Step on(AlarmBook book, Instant now) {
            return AlarmActs.shelve(book, key, by, until, why, now);
        }
    }

    /**
     * Takes an alarm off until a person brings it back.
     *
     * @param why the reason
     */
    record TakeOutOfService(AlarmKey key, String by, String why) implements AlarmAct {
        @Override
        public Step on(AlarmBook book, Instant now) {
            return AlarmActs.takeOutOfService(book, key, by, why, now);
        }
    }

    /** Brings back what a person has hidden. */
    record BringBack(AlarmKey key, String by) implements AlarmAct {
        @Override
        public Step on(AlarmBook book, Instant now) {
            return AlarmActs.bringBack(book, key, by, now);
        }
    }
}
