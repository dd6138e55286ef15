package bagward.site.view;

import bagward.alarm.Alarm;
import bagward.alarm.AlarmPhase;
import bagward.alarm.Aside;
import bagward.board.AlarmView;
import bagward.board.Board;
import java.util.Optional;

/**
 * An alarm that is hidden, and by what.
 *
 * @param what rule and subject
 * @param address page of the alarm
 * @param state shelved, suppressed by design or out of service
 * @param by who hid it, or what suppresses it
 * @param until when it comes back
 * @param why the reason; empty where {@code by} says it all
 */
public record AsideLine(String what, String address, String state, String by, String until, String why) {
    /** The line of an alarm; empty if nobody has hidden it. */
    public static Optional<AsideLine> of(Board board, AlarmView view) {
        Alarm alarm = view.alarm();
        return alarm.aside().map(aside -> {
            boolean design = alarm.phase() == AlarmPhase.SUPPRESSED;
            return new AsideLine(
                    view.rule().name() + ", "
                            + AlarmWords.subject(board, alarm.key().subject()),
                    AlarmWords.address(alarm.key()),
                    AlarmWords.phase(alarm.phase()),
                    design ? aside.why() : aside.by(),
                    until(board, alarm, aside),
                    design ? "" : aside.why());
        });
    }

    private static String until(Board board, Alarm alarm, Aside aside) {
        if (alarm.phase() == AlarmPhase.SUPPRESSED) {
            return "its cause ends";
        }
        return aside.until()
                .map(until -> Words.dayAndClock(until, board.zone()))
                .orElse("somebody brings it back");
    }
}
