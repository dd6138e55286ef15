package bagward.site.page;

import bagward.alarm.AlarmEvent;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Rule;
import bagward.board.Board;
import bagward.site.view.AlarmWords;
import bagward.site.view.AsideLine;
import bagward.site.view.JournalLine;
import bagward.site.view.ToDo;
import bagward.site.view.Words;
import java.util.List;

/**
 * All listed alarms, those put aside, and what alarms did of late.
 *
 * @param toDos highest priority first
 * @param aside alarms that are hidden
 * @param journal newest first
 */
public record AlarmsPage(List<Item> toDos, List<AsideLine> aside, List<JournalLine> journal) {
    /**
     * An alarm of the list.
     *
     * @param toDo what it asks for
     * @param since since when the condition holds, in words
     * @param over whether the condition is gone by now
     * @param address page of the alarm
     */
    public record Item(ToDo toDo, String since, boolean over, String address) {}

    /** The page of a board and the newest events. */
    public static AlarmsPage of(Board board, List<Rule> rules, List<AlarmEvent> events) {
        List<Item> items = board.alarms().stream()
                .map(a -> new Item(
                        ToDo.of(board, a),
                        Words.dayAndClock(a.alarm().since(), board.zone()),
                        a.alarm().phase() == AlarmPhase.RETURNED_UNACKNOWLEDGED,
                        AlarmWords.address(a.alarm().key())))
                .toList();
        return new AlarmsPage(
                items,
                board.setAside().stream()
                        .flatMap(view -> AsideLine.of(board, view).stream())
                        .toList(),
                events.stream().map(e -> JournalLine.of(board, rules, e)).toList());
    }
}
