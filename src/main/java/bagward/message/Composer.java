package bagward.message;

import bagward.board.Board;
import java.util.List;

/** Makes messages of what a board shows and of what was told already. */
@FunctionalInterface
public interface Composer {
    /**
     * The messages that are due now and were not put yet. A function of its arguments only: asked again with what it gave
     * added to {@code sent} it gives nothing.
     *
     * @param board the board; its time is now
     * @param plan who is told, and when
     * @param sent what was put so far
     */
    List<Message> compose(Board board, MessagePlan plan, Sent sent);
}
