package bagward.mould;

import bagward.bag.BagClimate;
import bagward.climate.RegularSeries;

/** Which end of the humidity interval is believed. A cell wet at one level is wet at all later ones. */
public enum Level {
    /** Wet even if the lower end is true; film water, which is itself an estimate, does not count. */
    CERTAIN,
    /** Wet by the best value. */
    LIKELY,
    /** Wet if the upper end is true. */
    POSSIBLE;

    RegularSeries humidityOf(BagClimate climate) {
        return switch (this) {
            case CERTAIN -> climate.humidity().low();
            case LIKELY -> climate.humidity().middle();
            case POSSIBLE -> climate.humidity().high();
        };
    }
}
