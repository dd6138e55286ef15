package bagward.bag;

import java.time.Instant;
import java.util.Optional;

/**
 * What a person says of a bag that is not new: it was on a head before.
 *
 * @param head the head it was on last
 * @param takenOff when it came off there, to the minute; empty for the last bag that came off that head by then
 */
public record UsedBefore(TagCode head, Optional<Instant> takenOff) {
    /** The last bag that came off a head. */
    public static UsedBefore on(TagCode head) {
        return new UsedBefore(head, Optional.empty());
    }
}
