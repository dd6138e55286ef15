package bagward.pollen;

import bagward.bag.Line;
import bagward.bag.PollenScore;
import bagward.station.HouseId;
import java.time.Instant;
import java.util.Optional;

/** One line of the journal of pollen scores. A score is known by its house, line and time. */
public sealed interface PollenEntry {
    /** Where it was scored. */
    HouseId house();

    /** The line whose pollen was scored; empty for the house as a whole. */
    Optional<Line> line();

    /** When it was scored. */
    Instant at();

    /** Who entered it. */
    String by();

    /**
     * A score was taken; a second one of the same house, line and time takes the place of the first.
     *
     * @param score what the fingertip showed
     */
    record Scored(HouseId house, Optional<Line> line, Instant at, String by, PollenScore score)
            implements PollenEntry {}

    /** A score was entered by mistake and does not count. */
    record Withdrawn(HouseId house, Optional<Line> line, Instant at, String by) implements PollenEntry {}
}
