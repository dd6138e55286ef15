package bagward.site.chart;

import bagward.bag.Banded;
import bagward.climate.TimeGrid;
import bagward.site.view.Words;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * One hour of an outlook in words.
 *
 * @param time when it begins
 * @param temperature °C with its interval, or "no data"
 * @param humidity %RH with its interval, or "no data"
 * @param film whether water on the film is likely
 */
public record NightRow(String time, String temperature, String humidity, String film) {
    /** The hours of an outlook, the next one first. */
    public static List<NightRow> of(NightLines night, ZoneId zone) {
        TimeGrid grid = night.humidity().middle().grid();
        List<NightRow> rows = new ArrayList<>();
        for (int i = 0; i < grid.size(); i++) {
            rows.add(new NightRow(
                    Words.clock(grid.at(i), zone),
                    cell(night.temperature(), i, Words::oneDecimal),
                    cell(night.humidity(), i, Words::whole),
                    night.film().get(i) ? "likely" : "–"));
        }
        return rows;
    }

    private static String cell(Banded banded, int i, DoubleFunction<String> words) {
        if (!banded.middle().known(i)) {
            return "no data";
        }
        return words.apply(banded.middle().valueOrNaN(i)) + " ("
                + words.apply(banded.low().valueOrNaN(i)) + " to "
                + words.apply(banded.high().valueOrNaN(i)) + ")";
    }
}
