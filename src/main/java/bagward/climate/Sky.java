package bagward.climate;

/** How much of the sun came through in an hour or a day; the limits are in {@link SkyLimits}. */
public enum Sky {
    /** Little cloud before the sun. */
    SUNNY,
    /** Sun and cloud by turns, or thin cloud. */
    MIXED,
    /** The sun was covered nearly all the time. */
    CLOUDY
}
