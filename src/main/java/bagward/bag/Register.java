package bagward.bag;

import java.time.Instant;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** All heads and sensor loans, immutable; the fold of all register changes. */
public final class Register {
    /** No head yet. */
    public static final Register EMPTY = new Register(new TreeMap<>(), List.of());

    private final SortedMap<TagCode, Head> heads;
    private final List<SensorLoan> loans;

    Register(SortedMap<TagCode, Head> heads, List<SensorLoan> loans) {
        this.heads = Collections.unmodifiableSortedMap(new TreeMap<>(heads));
        this.loans = List.copyOf(loans);
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
}
