package bagward.site.page;

import bagward.climate.Coverage;
import bagward.climate.RegularSeries;
import bagward.climate.Span;
import bagward.climate.TimeGrid;
import bagward.site.view.Words;
import bagward.watch.PlaceStay;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * A day of a drying place.
 *
 * @param day its name
 * @param temperature lowest, mean and highest, °C
 * @param humidity the same, %RH
 * @param moisture lowest and highest best value of what seed comes to, % of its moist mass
 * @param known share of the day so far that is known
 */
public record DryingRow(String day, String temperature, String humidity, String moisture, String known) {
    private static final String NO_DATA = "no data";

    /** The days of a stay, newest first. */
    static List<DryingRow> of(PlaceStay stay, ZoneId zone) {
        List<DryingRow> rows = new ArrayList<>();
        LocalDate first = stay.span().from().atZone(zone).toLocalDate();
        LocalDate day = stay.span().to().minusMillis(1).atZone(zone).toLocalDate();
        for (; !day.isBefore(first); day = day.minusDays(1)) {
            rows.add(row(stay, Span.ofDay(day, zone).within(stay.span()), zone));
        }
        return rows;
    }

    private static DryingRow row(PlaceStay stay, Span day, ZoneId zone) {
        double share = Coverage.of(stay.air().humidity(), day).share();
        return new DryingRow(
                Words.day(day.from(), zone),
                three(stay.air().temperature(), day, Words::oneDecimal),
                three(stay.air().humidity(), day, Words::whole),
                moisture(stay, day),
                Words.whole(Math.floor(100 * share)) + " %");
    }

    private static String three(RegularSeries series, Span day, DoubleFunction<String> number) {
        DoubleSummaryStatistics all = statistics(series, day);
        return all.getCount() == 0
                ? NO_DATA
                : number.apply(all.getMin()) + " · " + number.apply(all.getAverage()) + " · "
                        + number.apply(all.getMax());
    }

    private static String moisture(PlaceStay stay, Span day) {
        DoubleSummaryStatistics all = statistics(stay.seed().course().middle(), day);
        return all.getCount() == 0
                ? "no number"
                : Words.oneDecimal(all.getMin()) + " to " + Words.oneDecimal(all.getMax());
    }

    private static DoubleSummaryStatistics statistics(RegularSeries series, Span day) {
        DoubleSummaryStatistics all = new DoubleSummaryStatistics();
        TimeGrid grid = series.grid();
        for (int i = 0; i < grid.size(); i++) {
            if (day.holds(grid.at(i)) && series.known(i)) {
                all.accept(series.valueOrNaN(i));
            }
        }
        return all;
    }
}
