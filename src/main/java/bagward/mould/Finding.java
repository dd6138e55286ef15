package bagward.mould;

/**
 * What a model makes of a bag at one level.
 *
 * @param score the worst score
 * @param times when the bands were reached
 * @param reason the worst score in numbers
 * @param atHigh the score in numbers when it became high; empty if it did not
 */
record Finding(double score, BandTimes times, String reason, String atHigh) {}
