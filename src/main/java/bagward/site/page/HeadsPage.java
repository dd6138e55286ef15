package bagward.site.page;

import bagward.bag.Head;
import bagward.bag.Register;
import bagward.board.Board;
import bagward.site.view.DryingLots;
import bagward.site.view.HeadFacts;
import bagward.site.view.LotWords;
import bagward.site.view.Places;
import bagward.site.view.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * All heads, the newest first.
 *
 * @param rows one a head
 * @param drying seed lots that hang to dry now
 */
public record HeadsPage(List<Row> rows, List<DryingLots.Row> drying) {
    /**
     * A head in the list.
     *
     * @param tag its code
     * @param state where it stands
     * @param place house, bay and spot
     * @param parents its parents
     * @param pollinated when
     */
    public record Row(String tag, String state, String place, String parents, String pollinated) {}

    /** The list of a register. */
    public static HeadsPage of(Register register, Board board) {
        List<Head> heads = new ArrayList<>(register.heads());
        heads.sort((a, b) -> b.pollination().at().compareTo(a.pollination().at()));
        return new HeadsPage(heads.stream().map(h -> row(h, board)).toList(), DryingLots.of(register, board));
    }

    private static Row row(Head head, Board board) {
        return new Row(
                head.tag().value(),
                LotWords.state(head, board.at()),
                Places.house(board, head.spot().house()) + ", " + Places.spot(board, head.spot()),
                HeadFacts.parents(head),
                Words.dayAndClock(head.pollination().at(), board.zone()));
    }
}
