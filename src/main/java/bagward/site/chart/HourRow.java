package bagward.site.chart;

import bagward.bag.BagClimate;
import bagward.climate.RegularSeries;
import bagward.climate.TimeGrid;
import bagward.site.view.Words;
import bagward.watch.BagHistory;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/**
 * One hour of a history in words: the means of what is known of it.
 *
 * @param time day and hour
 * @param houseTemperature °C, or "no data"
 * @param bagTemperature °C, or "no data"
 * @param houseHumidity %RH, or "no data"
 * @param bagHumidity %RH, or "no data"
 * @param bagBand interval of the humidity in the bag, %RH
 * @param origin measured, estimated or mixed
 * @param film minutes with water on the film
 */
public record HourRow(
        String time,
        String houseTemperature,
        String bagTemperature,
        String houseHumidity,
        String bagHumidity,
        String bagBand,
        String origin,
        String film) {
    private static final String NO_DATA = "no data";

    /** The hours of a history from an instant on, newest first. */
    public static List<HourRow> of(BagHistory history, ZoneId zone, Instant from) {
        TimeGrid grid = history.bag().grid();
        int each = (int) Math.max(1, Duration.ofHours(1).dividedBy(grid.step()));
        List<HourRow> rows = new ArrayList<>();
        int begin = Math.max(0, grid.indexOf(from));
        for (int start = begin - begin % each; start < grid.size(); start += each) {
            rows.add(0, row(history, zone, start, Math.min(grid.size(), start + each)));
        }
        return rows;
    }

    private static HourRow row(BagHistory history, ZoneId zone, int start, int end) {
        BagClimate bag = history.bag();
        double low = mean(bag.humidity().low(), start, end);
        double high = mean(bag.humidity().high(), start, end);
        return new HourRow(
                Words.dayAndClock(bag.grid().at(start), zone),
                decimal(mean(history.house().temperature(), start, end)),
                decimal(mean(bag.temperature().middle(), start, end)),
                whole(mean(history.house().humidity(), start, end)),
                whole(mean(bag.humidity().middle(), start, end)),
                Double.isNaN(low + high) ? NO_DATA : Words.whole(low) + " to " + Words.whole(high),
                origin(bag, start, end),
                film(bag, start, end));
    }

    private static double mean(RegularSeries series, int start, int end) {
        double sum = 0;
        int known = 0;
        for (int i = start; i < end; i++) {
            if (series.known(i)) {
                sum += series.valueOrNaN(i);
                known++;
            }
        }
        return known == 0 ? Double.NaN : sum / known;
    }

    private static String decimal(double value) {
        return Double.isNaN(value) ? NO_DATA : Words.oneDecimal(value);
    }

    private static String whole(double value) {
        return Double.isNaN(value) ? NO_DATA : Words.whole(value);
    }

    private static String origin(BagClimate bag, int start, int end) {
        int measured = bag.measured().get(start, end).cardinality();
        return measured == 0 ? "estimated" : measured == end - start ? "measured" : "mixed";
    }

    private static String film(BagClimate bag, int start, int end) {
        long minutes = bag.film().likely().get(start, end).cardinality()
                * bag.grid().step().toMinutes();
        return minutes == 0 ? "–" : minutes + " min";
    }
}
