package bagward.bag;

import java.time.Instant;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/** What was noted of the flowers of one head while changes are folded, less what was withdrawn. Confined to one fold. */
final class FlowerNotes {
    private final Map<FlowerSign, SortedSet<Instant>> notes = new EnumMap<>(FlowerSign.class);

    FlowerNotes() {
        for (FlowerSign sign : FlowerSign.values()) {
            notes.put(sign, new TreeSet<>());
        }
    }

    /** Adds a note; false if there is one of that very time. */
    boolean add(FlowerSign sign, Instant at) {
        return of(sign).add(at);
    }

    /** Takes a note away; false if there is none. */
    boolean withdraw(FlowerSign sign, Instant at) {
        return of(sign).remove(at);
    }

    /** The newest time at which a flower opened as the last one, and the first at which the petals had dropped. */
    FlowerSigns signs() {
        SortedSet<Instant> opened = of(FlowerSign.LAST_OPENED);
        SortedSet<Instant> dropped = of(FlowerSign.PETALS_DROPPED);
        return new FlowerSigns(
                opened.isEmpty() ? Optional.empty() : Optional.of(opened.last()),
                dropped.isEmpty() ? Optional.empty() : Optional.of(dropped.first()));
    }

    private SortedSet<Instant> of(FlowerSign sign) {
        return notes.getOrDefault(sign, new TreeSet<>());
    }
}
