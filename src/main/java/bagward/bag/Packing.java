package bagward.bag;

import java.time.Instant;
import java.util.Optional;

/**
 * A seed lot was packed.
 *
 * @param at when
 * @param note what was seen; may be empty
 * @param moisture of the seed, if somebody measured it
 */
public record Packing(Instant at, String note, Optional<MeasuredMoisture> moisture) {}
