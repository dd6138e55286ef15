package bagward.message;

import bagward.board.BagView;
import bagward.board.Board;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What can still be done before a night: bags that are expected wet, bags that should be off, alarms nobody has seen. */
final class TonightList {
    /** Hours of 95 %RH or more that are worth a word before the night. Ours. */
    private static final double WORTH_A_WORD = 4;

    private TonightList() {}

    /** The list; empty if there is nothing to say. */
    static String text(Board board) {
        LocalDate today = ListWords.date(board, board.at());
        List<BagView> late = board.bags().stream()
                .filter(bag -> ListWords.date(board, bag.due()).isBefore(today))
                .toList();
        List<BagView> wet = board.bags().stream()
                .filter(bag ->
                        likely(bag).filter(hours -> hours >= WORTH_A_WORD).isPresent())
                .sorted(Comparator.comparingDouble((BagView bag) -> likely(bag).orElse(0.0))
                        .reversed())
                .toList();
        String sections = ListWords.unseen(board)
                + ListWords.bags(
                        board, "Expected wet tonight; swap for a dry bag or give it air", wet, TonightList::wetWords)
                + ListWords.bags(board, "Overdue and still on", late, bag -> "due " + ListWords.date(board, bag.due()));
        return sections.isEmpty() ? "" : sections + ListWords.BAG_CAUTION;
    }

    private static Optional<Double> likely(BagView bag) {
        return bag.tonight().map(outlook -> outlook.wet().likely());
    }

    private static String wetWords(BagView bag) {
        return bag.tonight()
                .map(outlook -> String.format(
                        Locale.ROOT,
                        "%.0f h at 95 %%RH or more expected, %.0f to %.0f h",
                        outlook.wet().likely(),
                        outlook.wet().least(),
                        outlook.wet().most()))
                .orElse("");
    }
}
