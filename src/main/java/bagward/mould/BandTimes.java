package bagward.mould;

import java.time.Instant;
import java.util.Optional;

/**
 * When each band was first reached; once reached it is not taken back, as what has infected stays.
 *
 * @param low first instant of at least low
 * @param moderate first instant of at least moderate
 * @param high first instant of high
 */
public record BandTimes(Optional<Instant> low, Optional<Instant> moderate, Optional<Instant> high) {
    /** The highest band reached. */
    public RiskBand highest() {
        if (high.isPresent()) {
            return RiskBand.HIGH;
        }
        if (moderate.isPresent()) {
            return RiskBand.MODERATE;
        }
        return low.isPresent() ? RiskBand.LOW : RiskBand.NONE;
    }

    /** When at least this band was reached; empty for NONE, which needs no reaching. */
    public Optional<Instant> reached(RiskBand band) {
        return switch (band) {
            case NONE -> Optional.empty();
            case LOW -> low;
            case MODERATE -> moderate;
            case HIGH -> high;
        };
    }

    /** The first band reached after an instant, with its time: with an outlook appended, what tonight will bring. */
    public Optional<Reached> nextAfter(Instant now) {
        for (RiskBand band : RiskBand.values()) {
            Optional<Instant> at = reached(band);
            if (at.isPresent() && at.get().isAfter(now)) {
                return Optional.of(new Reached(highestAt(at.get()), at.get()));
            }
        }
        return Optional.empty();
    }

    /** The highest band reached up to an instant. */
    public RiskBand highestAt(Instant now) {
        RiskBand highest = RiskBand.NONE;
        for (RiskBand band : RiskBand.values()) {
            if (reached(band).filter(at -> !at.isAfter(now)).isPresent()) {
                highest = band;
            }
        }
        return highest;
    }

    /**
     * A band and when it is reached.
     *
     * @param band the band
     * @param at when
     */
    public record Reached(RiskBand band, Instant at) {}
}
