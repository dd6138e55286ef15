package bagward.pollen;

import bagward.climate.Span;
import bagward.climate.Transmission;
import bagward.mould.HeatLimits;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The chance of pollen through one day.
 *
 * @param day the civil day
 * @param points from sunrise to sunset, each half hour
 * @param headline the point of the usual scoring time, or of now when that is over
 * @param indexSoFar clear-sky index of the day so far; empty while unknown, when the darker course is an overcast sky
 * @param bestHours when to work, if at all; see {@link BestHours}
 */
public record DayOutlook(
        LocalDate day,
        List<OutlookPoint> points,
        OutlookPoint headline,
        OptionalDouble indexSoFar,
        Optional<Span> bestHours) {
    private static final Duration EACH = Duration.ofMinutes(30);

    /** Copies the list. */
    public DayOutlook {
        points = List.copyOf(points);
    }

    /**
     * The outlook of a day.
     *
     * @param heat once it is warmer than its first limit, the best hours are over
     * @param usual usual time of scoring on that day
     * @return empty in polar night, or if light is missing since sunrise, so that nothing can be said
     */
    public static Optional<DayOutlook> of(
            HouseDay day, Transmission transmission, HeatLimits heat, ChanceModel model, Instant now, Instant usual) {
        SkyCourse course = new SkyCourse(day, transmission, now);
        Span light = day.daylight();
        if (light.length().isZero() || !course.soFar().complete()) {
            return Optional.empty();
        }
        OptionalDouble index = course.indexSoFar();
        double darker = index.orElse(SkyCourse.OVERCAST);
        List<OutlookPoint> points = new ArrayList<>();
        for (Instant at = light.from(); at.isBefore(light.to()); at = at.plus(EACH)) {
            points.add(point(course, model, at, now, darker));
        }
        points.add(point(course, model, light.to(), now, darker));
        Instant headline = usual.isAfter(now) ? usual : now;
        return Optional.of(new DayOutlook(
                day.day(),
                points,
                point(course, model, headline.isAfter(light.to()) ? light.to() : headline, now, darker),
                index,
                BestHours.find(points, day, heat, now)));
    }

    private static OutlookPoint point(SkyCourse course, ChanceModel model, Instant at, Instant now, double darker) {
        double clear = course.moles(at, 1);
        double so = course.moles(at, darker);
        return new OutlookPoint(at, !at.isAfter(now), clear, model.at(clear), so, model.at(so));
    }
}
