package bagward.mould;

import java.time.Instant;

/**
 * A band that was reached, or will be.
 *
 * @param band which
 * @param at when
 * @param organism name of the organism that comes there first
 * @param reason its score in numbers at that time
 */
public record Reach(RiskBand band, Instant at, String organism, String reason) {}
