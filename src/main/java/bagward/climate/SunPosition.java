package bagward.climate;

/**
 * Where the sun stands.
 *
 * @param azimuth degrees clockwise from north, 0 to 360
 * @param zenith degrees from straight up, 0 to 180
 */
public record SunPosition(double azimuth, double zenith) {
    /** Degrees above the horizon; negative when the sun is down. */
    public double elevation() {
        return 90 - zenith;
    }

    /** Cosine of the zenith angle: the share of a beam that a level surface catches; negative when the sun is down. */
    public double cosine() {
        return Math.cos(Math.toRadians(zenith));
    }
}
