package bagward.pollen;

import bagward.climate.Climate;
import bagward.climate.Span;
import bagward.climate.TimeGrid;
import bagward.mould.HeatLimits;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * The hours to work in: from when clear pollen is at least as likely as not under the darker course of the sky, to three
 * hours after the highest sun, at the full hour; not while the house is more humid than 90 %RH, and not from the first heat on.
 *
 * <p>Sources: pollen of winter rape in the air peaks in the late morning and early afternoon (Williams 1984, J. Agric.
 * Sci.); pollen of sugar beet rises as humidity falls below 90 % and Brassica sets less seed above 27 °C (Morrison 1993).
 * That these become limits in this form is a choice of ours.
 */
final class BestHours {
    private static final double AS_LIKELY_AS_NOT = 0.5;
    private static final double TOO_HUMID = 90;
    private static final Duration AFTER_NOON = Duration.ofHours(3);

    private BestHours() {}

    /** Empty if the chance stays below a half until the end of these hours, or the house is too humid or hot. */
    static Optional<Span> find(List<OutlookPoint> points, HouseDay day, HeatLimits heat, Instant now) {
        Instant end = end(day, heat, now);
        return points.stream()
                .filter(point -> point.ifSo().probability() >= AS_LIKELY_AS_NOT)
                .map(OutlookPoint::at)
                .filter(at -> !humid(day.climate(), at))
                .findFirst()
                .filter(start -> start.isBefore(end))
                .map(start -> new Span(start, end));
    }

    private static Instant end(HouseDay day, HeatLimits heat, Instant now) {
        Span light = day.daylight();
        Instant noon = light.from().plus(light.length().dividedBy(2));
        Instant end = noon.plus(AFTER_NOON).truncatedTo(ChronoUnit.HOURS);
        Climate climate = day.climate();
        TimeGrid grid = climate.grid();
        for (int i = 0; i < grid.size() && grid.at(i).isBefore(now); i++) {
            if (climate.temperature().valueOrNaN(i) > heat.watchCelsius()
                    && grid.at(i).isBefore(end)) {
                return grid.at(i);
            }
        }
        return end;
    }

    /** Unknown humidity, as that of hours to come, keeps nobody from working. */
    private static boolean humid(Climate climate, Instant at) {
        int cell = climate.grid().indexOf(at);
        return cell >= 0 && cell < climate.grid().size() && climate.humidity().valueOrNaN(cell) >= TOO_HUMID;
    }
}
