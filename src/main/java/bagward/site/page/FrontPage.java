package bagward.site.page;

import bagward.board.Board;
import bagward.site.plan.Plan;
import bagward.site.plan.Sheet;
import bagward.site.view.Round;
import bagward.site.view.Words;

/**
 * The start for desk and phone: what to do now, and the bench plan.
 *
 * @param round what to do now
 * @param desk the plan for wide pages
 * @param phone the plan for narrow pages
 * @param bags how many bags are on, in words
 */
public record FrontPage(Round round, Plan desk, Plan phone, String bags) {
    private static final int MOST_LINES = 12;

    /** The page of a board. */
    public static FrontPage of(Board board) {
        return new FrontPage(
                Round.of(board, MOST_LINES),
                Plan.of(board, Sheet.DESK),
                Plan.of(board, Sheet.PHONE),
                Words.count(board.bags().size(), "bag on", "bags on"));
    }
}
