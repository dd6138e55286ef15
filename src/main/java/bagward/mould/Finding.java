package bagward.mould;

/**
 * What a model makes of a bag at one level.
 *
 * @param score the worst score
 * @param times when the bands were reached
 * @param reason the worst score in numbers
 */
record Finding(double score, BandTimes times, String reason) {}
