package bagward.bag;

/**
 * How the outlooks of the past nights did, each made only from the nights before it.
 *
 * @param nights how many nights were judged
 * @param error root mean square error, in the unit of the quantity
 * @param threeNightError the same for the mean of the last three nights, the yardstick
 */
public record OutlookSkill(int nights, double error, double threeNightError) {}
