package bagward.bag;

import bagward.bag.RegisterChange.HangToDry;
import bagward.bag.RegisterChange.Pack;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was done to one seed lot while changes are folded, less what was withdrawn. Confined to one fold. */
final class DryingLog {
    private final List<RegisterChange> entries = new ArrayList<>();
    private Optional<RegisterChange> last = Optional.empty();

    /** The change that last altered it, a withdrawal among them. */
    Optional<RegisterChange> last() {
        return last;
    }

    /** Where it hangs now. */
    Optional<HangToDry> hangs() {
        return entries.isEmpty() || !(entries.get(entries.size() - 1) instanceof HangToDry hung)
                ? Optional.empty()
                : Optional.of(hung);
    }

    void add(RegisterChange entry) {
        entries.add(entry);
        last = Optional.of(entry);
    }

    /** An entry does not count, because of this. */
    void leaveOut(RegisterChange cause) {
        last = Optional.of(cause);
    }

    Drying drying() {
        List<DryingStay> stays = new ArrayList<>();
        List<Packing> packings = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            if (entries.get(i) instanceof HangToDry hung) {
                Optional<Instant> to =
                        i + 1 < entries.size() ? Optional.of(entries.get(i + 1).at()) : Optional.empty();
                stays.add(new DryingStay(hung.house(), hung.at(), to));
            } else if (entries.get(i) instanceof Pack pack) {
                packings.add(new Packing(pack.at(), pack.note(), pack.moisture()));
            }
        }
        return new Drying(stays, packings);
    }
}
