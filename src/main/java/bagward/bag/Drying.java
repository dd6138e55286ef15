package bagward.bag;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What became of a seed lot after its harvest.
 *
 * @param stays where it hung to dry, oldest first; a lot that was found too moist may hang again after it was packed
 * @param packings when it was packed, oldest first
 */
public record Drying(List<DryingStay> stays, List<Packing> packings) {
    /** Nothing was entered. */
    public static final Drying NONE = new Drying(List.of(), List.of());

    /** Copies the lists. */
    public Drying {
        stays = List.copyOf(stays);
        packings = List.copyOf(packings);
    }

    /** Where it hangs at an instant. */
    public Optional<DryingStay> at(Instant instant) {
        return stays.stream()
                .filter(stay -> !instant.isBefore(stay.from())
                        && stay.to().map(instant::isBefore).orElse(true))
                .findFirst();
    }

    /** Whether nothing was entered. */
    public boolean isEmpty() {
        return stays.isEmpty();
    }
}
