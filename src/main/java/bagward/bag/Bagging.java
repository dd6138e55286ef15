package bagward.bag;

import bagward.fault.ImpossibleValueException;
import java.time.Instant;
import java.util.Optional;

/**
 * One bag on one head, from put on to taken off.
 *
 * @param material what the bag is made of
 * @param putOn when it was put on
 * @param takenOff when it came off; empty while it is on
 * @param before the use of this same bag before; empty for a new bag
 */
public record Bagging(MaterialId material, Instant putOn, Optional<Instant> takenOff, Optional<BagUse> before) {
    /** Refuses a bag that came off before it was put on. */
    public Bagging {
        if (takenOff.isPresent() && takenOff.get().isBefore(putOn)) {
            throw new ImpossibleValueException(
                    "a bag put on at " + putOn + " cannot be taken off at " + takenOff.get() + ": give a later time");
        }
    }

    /** A new bag. */
    public Bagging(MaterialId material, Instant putOn, Optional<Instant> takenOff) {
        this(material, putOn, takenOff, Optional.empty());
    }

    /** Whether the bag is on at an instant. */
    public boolean onAt(Instant instant) {
        return !instant.isBefore(putOn) && takenOff.map(instant::isBefore).orElse(true);
    }
}
