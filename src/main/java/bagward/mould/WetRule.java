package bagward.mould;

import bagward.units.Checks;

/**
 * When the air in a bag counts as wet (or humid) for an organism. Humidity has a hysteresis: wet from {@code onPercent}
 * up, and then until it falls below {@code offPercent}. A cell counts only while its temperature lies above
 * {@code aboveCelsius} and not above {@code upToCelsius}.
 *
 * @param onPercent %RH at which wet begins, 0 to 100
 * @param offPercent %RH below which wet ends, 0 to {@code onPercent}
 * @param filmCounts whether water on the film counts as wet at any humidity
 * @param aboveCelsius °C above which a cell counts
 * @param upToCelsius °C up to which a cell counts
 */
public record WetRule(
        double onPercent, double offPercent, boolean filmCounts, double aboveCelsius, double upToCelsius) {
    /** Width of the hysteresis, %RH. Our choice: the usual error of a humidity sensor. */
    public static final double HYSTERESIS = 2;

    /** Water on bud or film: from 95 %RH up, or film at the dew point. Our choice; it errs on the wet side. */
    public static final WetRule WATER = new WetRule(95, 95 - HYSTERESIS, true, -90, 100);

    /** Refuses limits that no air can have and an end above the beginning. */
    public WetRule {
        Checks.within("humidity at which wet begins", onPercent, 0, 100, "%RH");
        Checks.within("humidity at which wet ends", offPercent, 0, onPercent, "%RH");
        Checks.within("lowest temperature that counts", aboveCelsius, -90, 100, "°C");
        Checks.within("highest temperature that counts", upToCelsius, aboveCelsius, 100, "°C");
    }

    /** Humid air from a limit up, with the usual hysteresis, between two temperatures; film water does not matter. */
    public static WetRule humidFrom(double percent, double aboveCelsius, double upToCelsius) {
        return new WetRule(percent, Math.max(0, percent - HYSTERESIS), false, aboveCelsius, upToCelsius);
    }

    boolean temperatureCounts(double celsius) {
        return celsius > aboveCelsius && celsius <= upToCelsius;
    }
}
