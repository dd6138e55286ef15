package bagward.climate;

import bagward.units.Irradiance;
import java.time.Instant;

/**
 * Global radiation at one instant under a cloudless sky: Haurwitz 1945 in the form of Reno, Hansen and Stein 2012
 * (SAND2012-2389),
 *
 * <pre>G = 1098 cos z exp(−0.059 / cos z)    W m⁻², z zenith angle; 0 when the sun is down</pre>
 *
 * <p>Its daily sum agrees with FAO-56 equation 37 ({@link DailyRadiation}) to about half a per cent in summer at 51° N.
 * A variant with 0.057 circulates; it differs by less than 0.5 % up to 60° from the zenith.
 */
public final class ClearSky {
    /** Radiation through a vanishing thickness of air, W m⁻². */
    private static final double ABOVE = 1098;
    /** Weakening for each thickness of air, no unit. */
    private static final double WEAKENING = 0.059;

    private ClearSky() {}

    /** Global radiation on a level surface at an instant. */
    public static Irradiance global(Site site, Instant instant) {
        return new Irradiance(
                globalWattsPerSquareMetre(Sun.position(site, instant).cosine()));
    }

    /** Global radiation for a cosine of the zenith angle (−1 to 1), W m⁻²; 0 from 0 down. */
    public static double globalWattsPerSquareMetre(double cosine) {
        return cosine <= 0 ? 0 : ABOVE * cosine * Math.exp(-WEAKENING / cosine);
    }
}
