package bagward.site.page;

import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmPhase;
import bagward.board.Board;
import bagward.site.view.ToDo;
import bagward.site.view.Words;
import java.util.List;

/**
 * All listed alarms and what alarms did of late.
 *
 * @param toDos highest priority first
 * @param journal newest first
 */
public record AlarmsPage(List<Item> toDos, List<Entry> journal) {
    /**
     * An alarm of the list.
     *
     * @param toDo what it asks for
     * @param since since when the condition holds, in words
     * @param over whether the condition is gone by now
     */
    public record Item(ToDo toDo, String since, boolean over) {}

    /**
     * A line of the journal.
     *
     * @param time day and time
     * @param what rule and subject
     * @param change what happened
     * @param by who did it
     * @param message the sentence at that time
     */
    public record Entry(String time, String what, String change, String by, String message) {}

    /** The page of a board and the newest events. */
    public static AlarmsPage of(Board board, List<AlarmEvent> events) {
        List<Item> items = board.alarms().stream()
                .map(a -> new Item(
                        ToDo.of(board, a),
                        Words.dayAndClock(a.alarm().since(), board.zone()),
                        a.alarm().phase() == AlarmPhase.RETURNED_UNACKNOWLEDGED))
                .toList();
        return new AlarmsPage(items, events.stream().map(e -> entry(board, e)).toList());
    }

    private static Entry entry(Board board, AlarmEvent event) {
        return new Entry(
                Words.dayAndClock(event.at(), board.zone()),
                event.key().rule() + ", " + event.key().subject().key().replace(":", " "),
                phase(event.to()),
                event.by(),
                event.message());
    }

    private static String phase(AlarmPhase phase) {
        return switch (phase) {
            case NORMAL -> "over";
            case PENDING -> "condition holds, waiting";
            case UNACKNOWLEDGED -> "raised";
            case ACKNOWLEDGED -> "seen";
            case RETURNED_UNACKNOWLEDGED -> "over before it was seen";
            case SHELVED -> "put aside for a time";
            case SUPPRESSED -> "suppressed by design";
            case OUT_OF_SERVICE -> "out of service";
        };
    }
}
