package bagward.alarm;

import java.time.Instant;

/**
 * A change of an alarm, for the journal.
 *
 * @param at when
 * @param key which alarm
 * @param from phase before
 * @param to phase after
 * @param by who did it; "rule" for the engine itself
 * @param message the sentence at that time
 */
public record AlarmEvent(Instant at, AlarmKey key, AlarmPhase from, AlarmPhase to, String by, String message) {}
