package bagward.pollen;

import bagward.climate.Climate;
import bagward.climate.LightSum;
import bagward.climate.RegularSeries;
import bagward.climate.Site;
import bagward.climate.SkyView;
import bagward.climate.Span;
import bagward.climate.Sun;
import bagward.climate.SunDay;
import bagward.climate.TimeGrid;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.BitSet;
import java.util.OptionalDouble;

/**
 * The climate of a house on one civil day, in cells of five minutes, and its sun. Light counts from sunrise to sunset
 * only, so that lamps at night do not pass for sun; lamps by day do.
 */
public final class HouseDay {
    /** Length of a cell. */
    public static final Duration STEP = Duration.ofMinutes(5);

    private static final double MICROMOLES_PER_MOLE = 1e6;

    private final LocalDate day;
    private final Span whole;
    private final Span daylight;
    private final Climate climate;
    private final SkyView view;
    private final BitSet clipped;

    /**
     * A day.
     *
     * @param climate of the house, on {@link #grid}
     * @param clipped cells with light at the top of the sensor's range
     */
    public HouseDay(Site site, LocalDate day, ZoneId zone, Climate climate, BitSet clipped) {
        this.day = day;
        this.whole = Span.ofDay(day, zone);
        this.climate = climate;
        this.clipped = (BitSet) clipped.clone();
        this.view = SkyView.of(site, climate.grid());
        SunDay sun = Sun.day(site, day, zone);
        Span none = new Span(whole.from(), whole.from());
        Span up = sun.daylight().orElse(sun instanceof SunDay.UpAllDay ? whole : none);
        Span within = up.within(whole);
        Instant end = cellAtOrBefore(within.to());
        Instant start = cellAtOrBefore(within.from().plus(STEP).minusNanos(1));
        this.daylight = end.isBefore(start) ? none : new Span(start, end);
    }

    /** A day of which nothing is known yet but its sun. */
    public static HouseDay unknown(Site site, LocalDate day, ZoneId zone) {
        RegularSeries nothing = RegularSeries.unknown(grid(day, zone));
        return new HouseDay(site, day, zone, new Climate(nothing, nothing, nothing), new BitSet());
    }

    /** Light outdoors under a cloudless sky through a day, µmol m⁻² s⁻¹; a gap where the sun is below 5°. */
    public static RegularSeries clear(Site site, LocalDate day, ZoneId zone) {
        return SkyView.of(site, grid(day, zone)).clearPhotons();
    }

    /** The cells of a day. */
    public static TimeGrid grid(LocalDate day, ZoneId zone) {
        Span whole = Span.ofDay(day, zone);
        return TimeGrid.covering(whole.from(), whole.to(), STEP);
    }

    /** The civil day. */
    public LocalDate day() {
        return day;
    }

    /** From sunrise to sunset in whole cells; of no length in polar night. */
    public Span daylight() {
        return daylight;
    }

    /** Temperature, humidity and light. */
    public Climate climate() {
        return climate;
    }

    /** A span of the day by whole hours of local time. */
    Span hours(int from, int to, ZoneId zone) {
        return new Span(
                day.atTime(from, 0).atZone(zone).toInstant(),
                day.atTime(to, 0).atZone(zone).toInstant());
    }

    /** Light sum of the daylight. */
    public LightSum light() {
        return lightUntil(daylight.to());
    }

    /** Light sum from sunrise to an instant, to the last whole cell; nothing before sunrise, all after sunset. */
    public LightSum lightUntil(Instant at) {
        Span until = new Span(daylight.from(), later(daylight.from(), earlier(cellAtOrBefore(at), daylight.to())));
        return LightSum.of(climate.light(), until, until, clipped);
    }

    /** Light that a cloudless sky gives outdoors in a span, mol m⁻²; low sun (below 5°) counts nothing. */
    public double clearMoles(Span span) {
        RegularSeries clear = view.clearPhotons();
        int first = Math.max(0, clear.grid().indexOf(span.from()));
        int end = Math.min(clear.grid().size(), clear.grid().indexOf(span.to()));
        double sum = 0;
        for (int i = first; i < end; i++) {
            sum += clear.known(i) ? clear.valueOrNaN(i) : 0;
        }
        return sum * STEP.toSeconds() / MICROMOLES_PER_MOLE;
    }

    /** Light indoors over the light of a cloudless sky outdoors; empty if too little of the span is known. */
    public OptionalDouble ratio(Span span) {
        return view.ratio(climate.light(), span);
    }

    /** How long the sun stood at least 5° high in a span. */
    Duration highSun(Span span) {
        RegularSeries clear = view.clearPhotons();
        int first = Math.max(0, clear.grid().indexOf(span.from()));
        int end = Math.min(clear.grid().size(), clear.grid().indexOf(span.to()));
        int cells = 0;
        for (int i = first; i < end; i++) {
            cells += clear.known(i) ? 1 : 0;
        }
        return STEP.multipliedBy(cells);
    }

    private static Instant cellAtOrBefore(Instant at) {
        long width = STEP.toSeconds();
        return Instant.ofEpochSecond(Math.floorDiv(at.getEpochSecond(), width) * width);
    }

    private static Instant earlier(Instant a, Instant b) {
        return a.isBefore(b) ? a : b;
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }
}
