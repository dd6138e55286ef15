package bagward.climate;

import java.util.OptionalDouble;

/**
 * What a cloudless sky would give at a place, cell by cell, to compare measured light with.
 *
 * <p>The clear-sky index of a span is its measured light over the light of a cloudless sky. It is taken as a ratio of
 * sums over cells in which the sun stands at least 5° high; lower, both are small and the horizon shades. An indoor
 * sensor sees only what the house lets through, so its ratio is divided by the {@link Transmission} of the house. Shade
 * screens, whitewash and lamps by day break this: a lamp makes the sky look brighter, a screen darker.
 *
 * <p>Cells should be ten minutes or shorter, since the sun is taken at the middle of each.
 */
public final class SkyView {
    /** Lowest sun that counts, degrees. */
    private static final double LOWEST_SUN = 5;

    /** Share of the cells with high sun that must be known; the rule of daily means. */
    private static final double LEAST_SHARE = 0.75;

    private final RegularSeries clear;

    private SkyView(RegularSeries clear) {
        this.clear = clear;
    }

    /** The view of a place over a grid; worth keeping, it asks for the sun's position in each cell. */
    public static SkyView of(Site site, TimeGrid grid) {
        double lowestCosine = Math.sin(Math.toRadians(LOWEST_SUN));
        double[] photons = new double[grid.size()];
        for (int i = 0; i < photons.length; i++) {
            double cosine = Sun.position(site, grid.at(i).plus(grid.step().dividedBy(2)))
                    .cosine();
            photons[i] = cosine < lowestCosine
                    ? Double.NaN
                    : ClearSky.globalWattsPerSquareMetre(cosine) * Light.MICROMOLES_PER_GLOBAL_WATT;
        }
        return new SkyView(RegularSeries.of(grid, photons));
    }

    /** Photon flux outdoors under a cloudless sky, µmol m⁻² s⁻¹; a gap where the sun is low or down. */
    public RegularSeries clearPhotons() {
        return clear;
    }

    /**
     * Measured light over the light of a cloudless sky outdoors, usually 0 to about 1.
     *
     * @param light photon flux on the grid of this view, µmol m⁻² s⁻¹
     * @return empty if the sun does not stand high in the span, or too little of that time is known
     */
    public OptionalDouble ratio(RegularSeries light, Span span) {
        Cells cells = Cells.in(clear.grid(), span);
        double measured = 0;
        double possible = 0;
        int high = 0;
        int known = 0;
        for (int i = cells.first(); i <= cells.last(); i++) {
            if (clear.known(i)) {
                high++;
                if (light.known(i)) {
                    known++;
                    measured += light.valueOrNaN(i);
                    possible += clear.valueOrNaN(i);
                }
            }
        }
        boolean enough = known > 0 && known >= LEAST_SHARE * high;
        return enough ? OptionalDouble.of(measured / possible) : OptionalDouble.empty();
    }

    /**
     * Clear-sky index of an hour or a day.
     *
     * @param light photon flux on the grid of this view, µmol m⁻² s⁻¹
     * @param transmission of the house; {@link Transmission#OUTDOORS} for a sensor under the open sky
     */
    public OptionalDouble clearSkyIndex(RegularSeries light, Transmission transmission, Span span) {
        OptionalDouble ratio = ratio(light, span);
        return ratio.isPresent() ? OptionalDouble.of(ratio.getAsDouble() / transmission.share()) : ratio;
    }
}
