package bagward.bag;

import java.time.Instant;

/**
 * One use of a bag, by which a bag that is used again is told from others.
 *
 * @param head the head it was on
 * @param putOn when it was put on there
 */
public record BagUse(TagCode head, Instant putOn) {}
