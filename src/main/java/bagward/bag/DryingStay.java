package bagward.bag;

import bagward.station.HouseId;
import java.time.Instant;
import java.util.Optional;

/**
 * A seed lot hanging in one place to dry.
 *
 * @param house where; empty for a place elsewhere, whose climate is not known
 * @param from since when
 * @param to until when; empty while it hangs there
 */
public record DryingStay(Optional<HouseId> house, Instant from, Optional<Instant> to) {}
