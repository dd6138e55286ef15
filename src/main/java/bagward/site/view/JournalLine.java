package bagward.site.view;

import bagward.alarm.AlarmEvent;
import bagward.alarm.Rule;
import bagward.board.Board;
import java.util.List;

/**
 * A line of the alarm journal.
 *
 * @param time day and time in the station's zone
 * @param what rule and subject
 * @param address page of the alarm
 * @param change what happened
 * @param by who did it
 * @param why the reason; empty if none was given
 * @param message the sentence at that time
 */
public record JournalLine(
        String time, String what, String address, String change, String by, String why, String message) {
    /** The line of an event. */
    public static JournalLine of(Board board, List<Rule> rules, AlarmEvent event) {
        return new JournalLine(
                Words.dayAndClock(event.at(), board.zone()),
                AlarmWords.rule(rules, event.key().rule()) + ", "
                        + AlarmWords.subject(board, event.key().subject()),
                AlarmWords.address(event.key()),
                AlarmWords.change(event),
                event.by(),
                event.why(),
                event.message());
    }
}
