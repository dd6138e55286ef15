package bagward.site.view;

import bagward.bag.Head;
import bagward.climate.DegreeDays;
import bagward.climate.Span;
import bagward.climate.TimeGrid;
import bagward.units.Celsius;
import bagward.watch.HouseDays;
import bagward.watch.Seasons;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;

/**
 * The warmth that the pods of a head have had, for information: no sum at which pods are ripe was found for Brassica oleracea,
 * so two bases stand side by side (0 and 5 °C, as for seed filling of rape, from memory) and no date follows from them.
 */
public final class Warmth {
    private static final Celsius NOTHING = new Celsius(0);
    private static final Celsius FIVE = new Celsius(5);
    private static final int MOST_DAYS = 200;

    private Warmth() {}

    /**
     * Degree-days of the house from daily means, from the day after the pollination to the day before today or to the end of
     * the head; empty before the first whole day.
     */
    public static Optional<Fact> of(Head head, Seasons seasons, LocalDate today, ZoneId zone) {
        LocalDate from = day(head.pollination().at(), zone).plusDays(1);
        LocalDate ended = head.ending().map(ending -> day(ending.at(), zone)).orElse(today);
        LocalDate to = ended.isBefore(today) ? ended : today;
        if (!from.isBefore(to) || from.plusDays(MOST_DAYS).isBefore(to)) {
            return Optional.empty();
        }
        HouseDays days = seasons.of(head.spot().house(), from, to);
        DegreeDays aboveNothing = sum(days, NOTHING);
        DegreeDays aboveFive = sum(days, FIVE);
        String gaps = aboveFive.unknown().isZero()
                ? ""
                : "; " + Words.count(aboveFive.unknown().toDays(), "day", "days") + " without data are not counted";
        return Optional.of(new Fact(
                "Warmth for the pods",
                Words.whole(aboveFive.sum()) + " °C d above 5 °C, " + Words.whole(aboveNothing.sum())
                        + " °C d above 0 °C, from means of " + Words.count(days.size(), "day", "days") + " of the house"
                        + gaps + "; for information, no sum is known at which pods are ripe"));
    }

    private static DegreeDays sum(HouseDays days, Celsius base) {
        TimeGrid grid = days.temperature().mean().grid();
        return DegreeDays.of(days.temperature().mean(), new Span(grid.start(), grid.end()), base);
    }

    private static LocalDate day(Instant at, ZoneId zone) {
        return at.atZone(zone).toLocalDate();
    }
}
