package bagward.bag;

import bagward.bag.RegisterChange.HangToDry;
import bagward.bag.RegisterChange.WithdrawDrying;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which entries about seed lots were withdrawn; known before the fold begins, since what was withdrawn must not be held
 * against the rules. Confined to one fold.
 */
final class WithdrawnEntries {
    private final Map<Key, WithdrawDrying> withdrawals = new HashMap<>();
    private final Set<Key> met = new HashSet<>();
    private final Set<Key> answered = new HashSet<>();

    WithdrawnEntries(List<RegisterChange> all) {
        for (RegisterChange change : all) {
            if (change instanceof WithdrawDrying withdraw) {
                withdrawals.putIfAbsent(new Key(withdraw.tag(), withdraw.at(), withdraw.step()), withdraw);
            }
        }
    }

    /** The withdrawal of an entry. */
    Optional<WithdrawDrying> of(RegisterChange entry) {
        return Optional.ofNullable(withdrawals.get(key(entry)));
    }

    /** Notes that an entry was left out; false if one of that step and time was left out before. */
    boolean leaveOut(RegisterChange entry) {
        return met.add(key(entry));
    }

    /** Whether a withdrawal has an entry of its own that was left out. */
    boolean answers(WithdrawDrying withdraw) {
        Key key = new Key(withdraw.tag(), withdraw.at(), withdraw.step());
        return met.contains(key) && answered.add(key);
    }

    private static Key key(RegisterChange entry) {
        DryingStep step = entry instanceof HangToDry ? DryingStep.HUNG : DryingStep.PACKED;
        return new Key(entry.tag(), entry.at(), step);
    }

    private record Key(TagCode tag, Instant at, DryingStep step) {}
}
