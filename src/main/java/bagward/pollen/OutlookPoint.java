package bagward.pollen;

import java.time.Instant;

/**
 * The outlook for one time of the day.
 *
 * @param at the time
 * @param over whether it is over, so that its light is measured
 * @param molesIfClear light from sunrise to it with a clear sky from now on, mol m⁻²
 * @param ifClear chance of clear or plentiful pollen then
 * @param molesIfSo light with the darker course of the sky, mol m⁻²
 * @param ifSo chance with that
 */
public record OutlookPoint(
        Instant at, boolean over, double molesIfClear, Chance ifClear, double molesIfSo, Chance ifSo) {}
