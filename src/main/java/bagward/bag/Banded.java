package bagward.bag;

import bagward.climate.RegularSeries;

/**
 * A series with the interval in which the true value lies with 90 % confidence.
 *
 * @param middle best value
 * @param low lower end of the interval
 * @param high upper end
 */
public record Banded(RegularSeries middle, RegularSeries low, RegularSeries high) {}
