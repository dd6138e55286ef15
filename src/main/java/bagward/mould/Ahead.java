package bagward.mould;

import java.time.Instant;
import java.util.Optional;

/**
 * What an outlook would bring: the climate up to the hour it was made for, carried on by it.
 *
 * @param issuedAt the hour it was made for
 * @param until its end
 * @param moderate when a moderate risk is reached, if it was not before and will be
 * @param high the same for a high one
 */
public record Ahead(Instant issuedAt, Instant until, Optional<Reach> moderate, Optional<Reach> high) {
    /** The first band above one that will be reached. */
    public Optional<Reach> nextAbove(RiskBand band) {
        return moderate.filter(reach -> band.compareTo(RiskBand.MODERATE) < 0)
                .or(() -> high.filter(reach -> band.compareTo(RiskBand.HIGH) < 0));
    }
}
