package bagward.bag;

import java.time.Instant;
import java.util.Optional;

/**
 * What somebody saw of the flowers of a head.
 *
 * @param lastFlowerOpened when its last flower opened; empty if nobody noted it
 * @param petalsDropped when its petals had dropped; empty if they have not or nobody noted it
 */
public record FlowerSigns(Optional<Instant> lastFlowerOpened, Optional<Instant> petalsDropped) {
    /** Nothing was noted. */
    public static final FlowerSigns NOT_NOTED = new FlowerSigns(Optional.empty(), Optional.empty());
}
