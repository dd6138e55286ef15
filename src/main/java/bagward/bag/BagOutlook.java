package bagward.bag;

import java.time.Instant;

/**
 * What is to be expected in a bag until the next morning, in hourly steps, made from the outlook of its house.
 *
 * @param issuedAt the full hour it was made for; nothing measured later is in it
 * @param climate temperature and humidity in the bag with 80 % intervals that hold both the doubt about the house and that
 *     about the bag, all estimated; certain and possible water on the film hold the doubt about the bag alone
 * @param wet hours with 95 %RH or more
 */
public record BagOutlook(Instant issuedAt, BagClimate climate, WetHours wet) {}
