package bagward.alarm;

import java.time.Instant;

/**
 * A change of an alarm, for the journal.
 *
 * @param at when
 * @param key which alarm
 * @param from phase before
 * @param to phase after; the same as before when a person brought back what was hidden, until the next step moves it
 * @param by who did it; {@link AlarmEngine#RULE} for the engine itself
 * @param message the sentence at that time
 * @param why the reason that a person gave, or what suppresses it by design; empty if there is none
 */
public record AlarmEvent(
        Instant at, AlarmKey key, AlarmPhase from, AlarmPhase to, String by, String message, String why) {
    /** A change that needs no reason. */
    public AlarmEvent(Instant at, AlarmKey key, AlarmPhase from, AlarmPhase to, String by, String message) {
        this(at, key, from, to, by, message, "");
    }

    /** Whether a person brought back what was hidden. */
    public boolean broughtBack() {
        return from == to && from.setAside();
    }
}
