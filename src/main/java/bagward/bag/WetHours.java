package bagward.bag;

import bagward.climate.RegularSeries;

/**
 * Hours of an outlook at 95 %RH or more.
 *
 * @param least if the humidity goes along the low end of its interval
 * @param likely along its middle
 * @param most along its high end
 * @param unknown hours of which nothing is known
 */
public record WetHours(double least, double likely, double most, double unknown) {
    private static final double WET = 95;

    /** Counts the cells of a humidity. */
    static WetHours of(Banded humidity) {
        int unknown = 0;
        RegularSeries middle = humidity.middle();
        for (int i = 0; i < middle.grid().size(); i++) {
            unknown += middle.known(i) ? 0 : 1;
        }
        double hours = middle.grid().step().toSeconds() / 3600.0;
        return new WetHours(
                hours * wet(humidity.low()), hours * wet(middle), hours * wet(humidity.high()), hours * unknown);
    }

    private static int wet(RegularSeries series) {
        int wet = 0;
        for (int i = 0; i < series.grid().size(); i++) {
            wet += series.valueOrNaN(i) >= WET ? 1 : 0;
        }
        return wet;
    }
}
