package bagward.site;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmAct;
import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmKey;
import bagward.alarm.Step;
import bagward.board.AlarmView;
import bagward.board.Board;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Alarms of the invented station that people have put aside, by the real rules of such acts. */
final class SampleAside {
    private final Map<AlarmKey, Alarm> hidden = new HashMap<>();

    void act(Board board, AlarmAct act, Instant now) {
        List<Alarm> alarms = Stream.concat(board.alarms().stream(), board.setAside().stream())
                .map(AlarmView::alarm)
                .toList();
        Step step = act.on(AlarmBook.of(alarms), now);
        if (act instanceof AlarmAct.BringBack) {
            hidden.remove(act.key());
        } else {
            step.book().find(act.key()).ifPresent(alarm -> hidden.put(act.key(), alarm));
        }
    }

    Board on(Board board) {
        List<AlarmView> listed = new ArrayList<>();
        List<AlarmView> aside = new ArrayList<>(board.setAside());
        for (AlarmView view : board.alarms()) {
            Alarm alarm = hidden.get(view.alarm().key());
            if (alarm == null) {
                listed.add(view);
            } else {
                aside.add(new AlarmView(alarm, view.rule(), view.spot()));
            }
        }
        return new Board(
                board.at(),
                board.station(),
                board.zone(),
                board.houses(),
                board.bags(),
                board.sensors(),
                listed,
                aside,
                board.drying(),
                board.newestReading());
    }
}
