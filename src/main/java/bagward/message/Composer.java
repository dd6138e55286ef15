package bagward.message;

import bagward.board.Board;
import bagward.pollen.PollenReport;
import bagward.station.HouseId;
import java.util.List;
import java.util.Map;

/** Makes messages of what a board shows and of what was told already. */
@FunctionalInterface
public interface Composer {
    /**
     * The messages that are due now and were not put yet. A function of its arguments only: asked again with what it gave
     * added to {@code sent} it gives nothing.
     *
     * @param board the board; its time is now
     * @param pollen the newest report of pollen of each house, as far as there is one
     * @param plan who is told, and when
     * @param sent what was put so far
     */
    List<Message> compose(Board board, Map<HouseId, PollenReport> pollen, MessagePlan plan, Sent sent);
}
