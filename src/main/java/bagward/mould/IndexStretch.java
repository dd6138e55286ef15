package bagward.mould;

import bagward.climate.RegularSeries;

/**
 * What a stretch of time did to a mould index.
 *
 * @param end where it stands afterwards
 * @param growingHours time at or above the critical humidity, above which it grows, h
 * @param knownHours time with data, h
 * @param unknownHours time without data, in which the index is left as it was, h
 */
public record IndexStretch(IndexState end, double growingHours, double knownHours, double unknownHours) {
    /**
     * Goes over a climate.
     *
     * @param substrate what it grows on
     * @param temperature °C, in steps of an hour or less
     * @param humidity %RH, on the same grid
     * @param before where the index stood before it
     */
    public static IndexStretch over(
            Substrate substrate, RegularSeries temperature, RegularSeries humidity, IndexState before) {
        IndexWalk walk = new IndexWalk(new GrowthIndex(substrate), before);
        walk.over(temperature, humidity, cell -> {});
        return walk.stretch();
    }

    /** Time of which nothing is known, after which all is as it was. */
    public static IndexStretch unknown(double hours, IndexState before) {
        return new IndexStretch(before, 0, 0, hours);
    }
}
