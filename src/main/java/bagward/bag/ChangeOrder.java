package bagward.bag;

import bagward.bag.RegisterChange.GiveBack;
import bagward.bag.RegisterChange.HangToDry;
import bagward.bag.RegisterChange.Lend;
import bagward.bag.RegisterChange.NoteFlowers;
import bagward.bag.RegisterChange.Pack;
import bagward.bag.RegisterChange.PutOn;
import bagward.bag.RegisterChange.Swap;
import bagward.bag.RegisterChange.TakeOff;
import bagward.bag.RegisterChange.WithdrawDrying;
import bagward.bag.RegisterChange.WithdrawFlowers;
import java.util.Comparator;

/**
 * The order in which changes take effect: by the time they were done. At one and the same time what ends comes before
 * what begins (sensor given back, bag taken off, head harvested or lost; then swapped, put on, lent, flowers noted, such a note
 * withdrawn, lot hung, packed, such an entry withdrawn), so that a spot or
 * a sensor that becomes free can be used at once; then by tag.
 */
final class ChangeOrder {
    static final Comparator<RegisterChange> BY_EVENT = Comparator.comparing(RegisterChange::at)
            .thenComparingInt(ChangeOrder::rank)
            .thenComparing(RegisterChange::tag)
            .thenComparing(RegisterChange::toString);

    private ChangeOrder() {}

    private static int rank(RegisterChange change) {
        if (change instanceof GiveBack) {
            return 0;
        } else if (change instanceof TakeOff) {
            return 1;
        } else if (change instanceof Swap) {
            return 3;
        } else if (change instanceof PutOn) {
            return 4;
        } else if (change instanceof Lend) {
            return 5;
        } else if (change instanceof NoteFlowers) {
            return 6;
        } else if (change instanceof WithdrawFlowers) {
            return 7;
        } else if (change instanceof HangToDry) {
            return 8;
        } else if (change instanceof Pack) {
            return 9;
        } else if (change instanceof WithdrawDrying) {
            return 10;
        }
        return 2;
    }
}
