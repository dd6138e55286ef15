package bagward.site.page;

import bagward.board.Board;
import bagward.site.plan.Plan;
import bagward.site.plan.Sheet;
import bagward.site.view.DryingFacts;
import bagward.site.view.Fact;
import bagward.site.view.Round;
import bagward.site.view.Tonight;
import bagward.site.view.Words;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The wall screen.
 *
 * @param plan the bench plan
 * @param round what to do now
 * @param bags how many bags are on, in words
 * @param pollen outlook of each house in a few words
 * @param tonight what is to be expected in each house, to follow the bags; empty without an outlook
 * @param drying places in which seed dries, in one line; empty if there are none
 */
public record WallPage(Plan plan, Round round, String bags, List<Fact> pollen, String tonight, String drying) {
    /** Copies the list. */
    public WallPage {
        pollen = List.copyOf(pollen);
    }

    private static String drying(Board board) {
        return board.drying().stream().map(DryingFacts::line).collect(Collectors.joining("; "));
    }

    /** The wall of a board with at most so many lines to do. */
    public static WallPage of(Board board, int lines, List<Fact> pollen) {
        return new WallPage(
                Plan.of(board, Sheet.WALL),
                Round.of(board, lines),
                Words.count(board.bags().size(), "bag on", "bags on"),
                pollen,
                Tonight.lines(board).isEmpty() ? "" : ". Tonight: " + String.join("; ", Tonight.lines(board)) + ".",
                drying(board));
    }
}
