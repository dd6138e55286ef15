package bagward.bag;

import bagward.climate.MoistAir;

/**
 * The well-mixed balance of one bag, stepped exactly over cells of constant input.
 *
 * <pre>
 * T* = T_house + k S − c (1 − day)         dT/dt = (T* − T)/tau
 * e* = (1 − f) e_house + f es(T)           de/dt = (e* − e)/tau,   e ≤ es(T − film cooling / 2)
 * </pre>
 *
 * The film is wet where e ≥ es(T − film cooling); the air between head and wet film is held half way between the two,
 * with f and the night terms going over from night to day as the light grows ({@link Daylight}). Beside the state it
 * carries the sensitivities that the band needs. All results are means over the cell just stepped. Confined to one
 * estimate.
 */
final class BagBalance {
    /** Below this ratio of vapour to saturation no film is wet, whatever its cooling. */
    private static final double SURELY_DRY = 0.8;

    private final double closureDay;
    private final double closureNight;
    private final double sunGain;
    private final double tauMinutes;
    private final double nightCooling;
    private final double filmCooling;
    /** Share of the way to the target within one cell, and the mean distance left over the cell. */
    private final double covered;

    private final double meanLeft;

    private boolean started;
    private boolean vapourStarted;
    private double temperatureEnd;
    private double laggedEnd;
    private double lightEnd;
    private double vapourEnd;
    private double openEnd;

    private double temperature;
    private double lagged;
    private double light;
    private double vapour;
    private double open;
    private double driven;
    private double saturation;
    private double cooling;
    private double filmSaturation;
    private boolean filmWet;

    BagBalance(BagBelief belief, double stepMinutes) {
        closureDay = belief.closureByDay().mean();
        closureNight = belief.closureByNight().mean();
        sunGain = belief.sunGain().mean();
        tauMinutes = belief.responseMinutes().mean();
        nightCooling = belief.nightCooling().mean();
        filmCooling = belief.filmCooling().mean();
        double ratio = stepMinutes / tauMinutes;
        covered = -Math.expm1(-ratio);
        meanLeft = covered / ratio;
    }

    /** Forgets the state: the next step starts at the steady state. */
    void restart() {
        started = false;
        vapourStarted = false;
    }

    /** Forgets the vapour only. */
    void restartVapour() {
        vapourStarted = false;
    }

    /** Steps the heat: house temperature °C, global light W m⁻², share of day. */
    void stepHeat(double house, double global, double day) {
        double target = house + sunGain * global - nightCooling * (1 - day);
        if (!started) {
            temperatureEnd = target;
            laggedEnd = target;
            lightEnd = global;
            started = true;
        }
        temperature = target + (temperatureEnd - target) * meanLeft;
        lagged = temperature + (laggedEnd - temperature) * meanLeft;
        light = global + (lightEnd - global) * meanLeft;
        temperatureEnd += (target - temperatureEnd) * covered;
        laggedEnd += (temperature - laggedEnd) * covered;
        lightEnd += (global - lightEnd) * covered;
        saturation = MoistAir.saturationKilopascals(temperature);
    }

    /** Steps the vapour after the heat: house vapour pressure kPa, share of day. */
    void stepVapour(double house, double day) {
        double closure = closureNight + (closureDay - closureNight) * day;
        double target = (1 - closure) * house + closure * saturation;
        if (!vapourStarted) {
            vapourEnd = target;
            openEnd = house;
            vapourStarted = true;
        }
        driven = target;
        vapour = target + (vapourEnd - target) * meanLeft;
        open = house + (openEnd - house) * meanLeft;
        vapourEnd += (target - vapourEnd) * covered;
        openEnd += (house - openEnd) * covered;
        cooling = filmCooling * (1 - day);
        filmSaturation = Double.NaN;
        condense();
    }

    private void condense() {
        filmWet = false;
        if (vapour < SURELY_DRY * saturation) {
            return;
        }
        filmWet = vapour >= filmSaturation();
        // What lies below the saturation of the film lies below that of warmer air too.
        if (!filmWet && cooling >= 0) {
            return;
        }
        double most = MoistAir.saturationKilopascals(temperature - cooling / 2);
        if (vapour > most) {
            vapour = most;
            vapourEnd = Math.min(vapourEnd, most);
        }
    }

    /** Temperature, °C. */
    double temperature() {
        return temperature;
    }

    /** Global light as the bag feels it, W m⁻²: the sensitivity of the temperature to the sun gain. */
    double feltLight() {
        return light;
    }

    /** Sensitivity of the temperature to the response time, K per minute. */
    double responseSensitivity() {
        return (lagged - temperature) / tauMinutes;
    }

    /** Relative humidity, %RH. */
    double humidity() {
        return 100 * vapour / saturation;
    }

    /** Relative humidity towards which the bag is driven, as if no film took water from it, %RH. */
    double drivenHumidity() {
        return 100 * driven / saturation;
    }

    /** Relative humidity if the bag were open (f = 0), %RH. */
    double openHumidity() {
        return 100 * open / saturation;
    }

    /** Saturation vapour pressure in the bag, kPa. */
    double saturation() {
        return saturation;
    }

    /** Saturation vapour pressure at the temperature of the film by the best value of its cooling, kPa. */
    double filmSaturation() {
        if (Double.isNaN(filmSaturation)) {
            filmSaturation = MoistAir.saturationKilopascals(temperature - cooling);
        }
        return filmSaturation;
    }

    /** Whether the film is at or below the dew point. */
    boolean filmWet() {
        return filmWet;
    }
}
