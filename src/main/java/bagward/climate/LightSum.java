package bagward.climate;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * Light sum (daily light integral): photons of 400 to 700 nm on a square metre, Σ PPFD Δt / 10⁶.
 *
 * <p>A hole at noon takes a large part of a day's light: of a day of twelve hours, one hour round noon is 13 %, two are
 * 26 %. So a sum is whole only if at least 95 % of the daylight is known and no gap in daylight is longer than 30
 * minutes. Otherwise it is "at least" this much and never a low value; so it is if the sensor was at the top of its
 * range. Gaps at night take nothing away.
 *
 * @param moles mol m⁻², over the known time
 * @param daylight what of the daylight is known
 * @param clipped whether some of it was measured at the top of the sensor's range
 */
public record LightSum(double moles, Coverage daylight, boolean clipped) {
    private static final double MICROMOLES_PER_MOLE = 1e6;

    /**
     * Light sum of a span.
     *
     * @param light photon flux, µmol m⁻² s⁻¹
     * @param span what to sum over, lamps at night included
     * @param daylight the part of the span in which gaps matter
     * @param clipped cells with clipped readings, see {@link #clippedCells}; may be empty
     */
    public static LightSum of(RegularSeries light, Span span, Span daylight, BitSet clipped) {
        TimeGrid grid = light.grid();
        Cells cells = Cells.in(grid, span);
        double sum = 0;
        for (int i = cells.first(); i <= cells.last(); i++) {
            if (light.known(i)) {
                sum += light.valueOrNaN(i);
            }
        }
        int firstClipped = clipped.nextSetBit(cells.first());
        return new LightSum(
                sum * grid.step().toSeconds() / MICROMOLES_PER_MOLE,
                Coverage.of(light, daylight),
                firstClipped >= 0 && firstClipped <= cells.last());
    }

    /**
     * Light sum of a civil day at a place. In polar day the whole day is daylight; in polar night no gap matters.
     *
     * @param light photon flux, µmol m⁻² s⁻¹
     * @param clipped cells with clipped readings; may be empty
     */
    public static LightSum ofDay(RegularSeries light, Site site, LocalDate day, ZoneId zone, BitSet clipped) {
        Span whole = Span.ofDay(day, zone);
        SunDay sun = Sun.day(site, day, zone);
        Optional<Span> daylight = sun.daylight();
        Span none = new Span(whole.from(), whole.from());
        Span wanted = daylight.orElse(sun instanceof SunDay.UpAllDay ? whole : none);
        return of(light, whole, wanted.within(whole), clipped);
    }

    /** The cells in which a reading lies that was at the top of the sensor's range. */
    public static BitSet clippedCells(TimeGrid grid, List<Reading> readings) {
        BitSet cells = new BitSet(grid.size());
        for (Reading reading : readings) {
            int cell = grid.indexOf(reading.measuredAt());
            if (reading.flags().contains(ReadingFlag.CLIPPED) && cell >= 0 && cell < grid.size()) {
                cells.set(cell);
            }
        }
        return cells;
    }

    /** Whether it is the whole sum; otherwise the truth is at least this much. */
    public boolean complete() {
        return daylight.enoughForLightSum() && !clipped;
    }
}
