package bagward.bag;

import java.time.Instant;

/**
 * How and when a head ended.
 *
 * @param at when
 * @param state HARVESTED or LOST
 * @param note why, or what was seen; may be empty
 */
public record Ending(Instant at, HeadState state, String note) {}
