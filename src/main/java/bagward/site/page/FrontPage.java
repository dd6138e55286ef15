package bagward.site.page;

import bagward.board.Board;
import bagward.site.plan.Plan;
import bagward.site.plan.Sheet;
import bagward.site.view.Round;
import bagward.site.view.Tonight;
import bagward.site.view.Words;
import java.util.List;

/**
 * The start for desk and phone: what to do now, and the bench plan.
 *
 * @param round what to do now
 * @param desk the plan for wide pages
 * @param phone the plan for narrow pages
 * @param tonight what is to be expected in each house
 * @param bags how many bags are on, in words
 */
public record FrontPage(Round round, Plan desk, Plan phone, List<Tonight.House> tonight, String bags) {
    /** Copies the list. */
    public FrontPage {
        tonight = List.copyOf(tonight);
    }

    private static final int MOST_LINES = 12;

    /** The page of a board. */
    public static FrontPage of(Board board) {
        return new FrontPage(
                Round.of(board, MOST_LINES),
                Plan.of(board, Sheet.DESK),
                Plan.of(board, Sheet.PHONE),
                Tonight.of(board),
                Words.count(board.bags().size(), "bag on", "bags on"));
    }
}
