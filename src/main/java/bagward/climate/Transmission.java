package bagward.climate;

import bagward.units.Checks;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.stat.StatUtils;

/**
 * Share of the light outdoors that reaches a sensor in a house.
 *
 * @param share above 0, at most 1
 * @param days days it was learnt from; 0 if it is assumed
 */
public record Transmission(double share, int days) {
    /** A sensor under the open sky. */
    public static final Transmission OUTDOORS = new Transmission(1, 0);

    /** A glasshouse of which nothing is known yet: 0.65, where 0.4 to 0.8 are usual. */
    public static final Transmission ASSUMED = new Transmission(0.65, 0);

    /** Fewer days than this teach nothing: among them there may be no clear one. A choice of ours. */
    public static final int LEAST_DAYS = 10;

    /** Nearly the highest day: a cloudless one, but not the one with a lamp or a cloud's bright edge. */
    private static final double CLEAR_DAY_PERCENTILE = 95;

    /** Refuses houses that would make light or let none in. */
    public Transmission {
        Checks.within("transmission", share, 0.01, 1, "");
    }

    /**
     * Learns the transmission from the days of a trailing season: the 95th percentile of the daily ratios of light
     * indoors to a cloudless sky. As long as fewer than ten days are known, the assumed value stands. A season without
     * one clear day teaches too low a value and lets cloudy days look sunny; lamps by day teach too high a one.
     *
     * @param view of the site, on the grid of the light
     * @param light photon flux indoors, µmol m⁻² s⁻¹
     * @param season its civil days
     */
    public static Transmission learn(SkyView view, RegularSeries light, List<Span> season) {
        double[] ratios = season.stream()
                .map(day -> view.ratio(light, day))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
        return ofRatios(ratios);
    }

    /** The same from the daily ratios themselves, in any order. */
    public static Transmission ofRatios(double... ratios) {
        if (ratios.length < LEAST_DAYS) {
            return ASSUMED;
        }
        double high = StatUtils.percentile(ratios, CLEAR_DAY_PERCENTILE);
        return new Transmission(Math.max(0.01, Math.min(1, high)), ratios.length);
    }

    /** Whether it was learnt from this house. */
    public boolean learnt() {
        return days > 0;
    }
}
