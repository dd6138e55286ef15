package bagward.site.api;

import bagward.alarm.AlarmEvent;
import java.time.Instant;

/**
 * A change of an alarm in the interface.
 *
 * @param at when
 * @param rule short name of the rule
 * @param subject kind and name
 * @param from phase before
 * @param to phase after
 * @param by who did it; "rule" if no person did
 * @param why the reason that was given, or what suppresses it; may be empty
 * @param message the sentence at that time
 */
public record EventAnswer(
        Instant at, String rule, String subject, String from, String to, String by, String why, String message) {
    /** The answer for an event. */
    public static EventAnswer of(AlarmEvent event) {
        return new EventAnswer(
                event.at(),
                event.key().rule().value(),
                event.key().subject().key(),
                word(event.from()),
                word(event.to()),
                event.by(),
                event.why(),
                event.message());
    }

    /** A constant as the interface writes it. */
    public static String word(Enum<?> constant) {
        return BagAnswer.word(constant);
    }
}
