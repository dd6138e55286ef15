package bagward.demo;

/**
 * How a sensor errs.
 *
 * @param lagSeconds time constant of its response, s, at least 1
 * @param celsiusOffset K that it shows too much
 * @param percentOffset %RH that it shows too much
 * @param noise standard deviation as a share of the usual one: 0.05 K, 0.4 %RH, 0.5 % of the light
 * @param lostShare share of its messages that never arrive, 0 to 1
 */
record SensorNature(double lagSeconds, double celsiusOffset, double percentOffset, double noise, double lostShare) {
    static SensorNature usual(double celsiusOffset, double percentOffset) {
        return new SensorNature(40, celsiusOffset, percentOffset, 1, 0.003);
    }
}
