package bagward.mould;

import bagward.bag.BagClimate;
import bagward.climate.RegularSeries;

/** Which end of the humidity interval is believed. A cell wet at one level is wet at all later ones. */
public enum Level {
    /** Wet even if the lower end is true, or with water on the film that is sure. */
    CERTAIN,
    /** Wet by the best value. */
    LIKELY,
    /** Wet if the upper end is true. */
    POSSIBLE;

    boolean filmWetAt(BagClimate climate, int cell) {
        return switch (this) {
            case CERTAIN -> climate.film().certainAt(cell);
            case LIKELY -> climate.film().likelyAt(cell);
            case POSSIBLE -> climate.film().possibleAt(cell);
        };
    }

    RegularSeries humidityOf(BagClimate climate) {
        return switch (this) {
            case CERTAIN -> climate.humidity().low();
            case LIKELY -> climate.humidity().middle();
            case POSSIBLE -> climate.humidity().high();
        };
    }
}
