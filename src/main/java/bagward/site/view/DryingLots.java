package bagward.site.view;

import bagward.bag.DryingStay;
import bagward.bag.Head;
import bagward.bag.Register;
import bagward.board.Board;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;

/** The seed lots that hang to dry now, those that hang longest first. */
public final class DryingLots {
    private DryingLots() {}

    /**
     * A lot in the list.
     *
     * @param tag its code
     * @param parents its parents
     * @param place where it hangs
     * @param hung since when it hangs without a break, wherever it was moved
     * @param days how long, in days
     */
    public record Row(String tag, String parents, String place, String hung, String days) {}

    /** The list of a register at the time of a board. */
    public static List<Row> of(Register register, Board board) {
        return register.heads().stream()
                .filter(head -> head.drying().at(board.at()).isPresent())
                .sorted(Comparator.comparing((Head head) -> since(head, board.at()))
                        .thenComparing(Head::tag))
                .map(head -> row(head, board))
                .toList();
    }

    /** Since when a lot that hangs has hung without having been packed between. */
    public static Instant since(Head head, Instant at) {
        Instant since = head.drying().at(at).orElseThrow().from();
        for (int i = head.drying().stays().size() - 1; i >= 0; i--) {
            DryingStay earlier = head.drying().stays().get(i);
            if (earlier.to().isPresent() && earlier.to().get().equals(since)) {
                since = earlier.from();
            }
        }
        return since;
    }

    private static Row row(Head head, Board board) {
        Instant since = since(head, board.at());
        long hours = Duration.between(since, board.at()).toHours();
        return new Row(
                head.tag().value(),
                HeadFacts.parents(head),
                LotWords.place(head.drying().at(board.at()).orElseThrow(), board),
                Words.dayAndClock(since, board.zone()),
                Words.oneDecimal(hours / 24.0) + " d");
    }
}
