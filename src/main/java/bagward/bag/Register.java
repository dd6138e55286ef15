package bagward.bag;

import java.time.Instant;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All heads and sensor loans, immutable; the fold of all register changes in the order in which they were done, so that
 * two registers that were given the same changes in any order are equal.
 */
public final class Register {
    /** No head yet. */
    public static final Register EMPTY = new Register(new TreeMap<>(), List.of(), List.of());

    private final SortedMap<TagCode, Head> heads;
    private final List<SensorLoan> loans;
    private final List<RegisterChange> changes;

    Register(SortedMap<TagCode, Head> heads, List<SensorLoan> loans, List<RegisterChange> changes) {
        this.heads = Collections.unmodifiableSortedMap(new TreeMap<>(heads));
        this.loans = List.copyOf(loans);
        this.changes = List.copyOf(changes);
    }

    /** All heads in the order of their tags. */
    public Collection<Head> heads() {
        return heads.values();
    }

    /** The head of a tag. */
    public Optional<Head> find(TagCode tag) {
        return Optional.ofNullable(heads.get(tag));
    }

    /** Heads whose bag is on at an instant, in the order of their tags. */
    public List<Head> baggedAt(Instant instant) {
        return heads.values().stream()
                .filter(h -> h.stateAt(instant) == HeadState.BAGGED)
                .toList();
    }

    /** All sensor loans, oldest first. */
    public List<SensorLoan> loans() {
        return loans;
    }

    /** All changes that made it, in the order in which they were done. */
    public List<RegisterChange> changes() {
        return changes;
    }

    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof Register that && heads.equals(that.heads) && loans.equals(that.loans));
    }

    @Override
    public int hashCode() {
        return 31 * heads.hashCode() + loans.hashCode();
    }
}
