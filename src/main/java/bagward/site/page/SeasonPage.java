package bagward.site.page;

import bagward.board.Board;
import bagward.climate.RegularSeries;
import bagward.site.chart.Chart;
import bagward.site.chart.SeasonChart;
import bagward.site.view.Words;
import bagward.watch.HouseDays;
import bagward.watch.Seasons;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Houses day by day over months and years, from summaries.
 *
 * @param days how many days are shown, today as the last of them
 * @param kept how far back single readings are kept
 * @param houses in walking order
 */
public record SeasonPage(int days, String kept, List<House> houses) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);
    private static final String NO_DATA = "no data";

    /**
     * A house.
     *
     * @param id short name, for the address on the page
     * @param name as people call it
     * @param sentence how much is known
     * @param wide chart for a desk
     * @param narrow chart for a phone
     * @param rows its days, newest first; empty if nothing is known
     */
    public record House(String id, String name, String sentence, Chart wide, Chart narrow, List<Row> rows) {}

    /**
     * A day.
     *
     * @param day its name
     * @param temperature lowest, mean and highest, °C
     * @param humidity the same, %RH
     * @param light mean and highest, µmol m⁻² s⁻¹
     * @param known share of the day that is known
     */
    public record Row(String day, String temperature, String humidity, String light, String known) {}

    /** The page of the days up to today. */
    public static SeasonPage of(Board board, Seasons seasons, int days) {
        LocalDate end = board.at().atZone(board.zone()).toLocalDate().plusDays(1);
        List<House> houses = new ArrayList<>();
        for (bagward.station.House house : board.places()) {
            HouseDays found = seasons.of(house.id(), end.minusDays(days), end);
            houses.add(house(house, found));
        }
        return new SeasonPage(days, kept(board, seasons.keptSince()), houses);
    }

    private static String kept(Board board, Instant since) {
        return since.equals(Instant.MIN)
                ? "Single readings of the whole time are kept."
                : "Single readings are kept since " + DAY.format(since.atZone(board.zone()))
                        + "; of the time before, these summaries are what is left.";
    }

    private static House house(bagward.station.House house, HouseDays days) {
        int known = Math.max(
                days.temperature().knownDays(),
                Math.max(days.humidity().knownDays(), days.light().knownDays()));
        String sentence = known == 0
                ? "No day of this time is known well enough for a mean yet."
                : Words.count(known, "day", "days") + " of " + days.size()
                        + " are known; a day of which less than 75 % is known is a gap.";
        return new House(
                house.id().value(),
                house.name(),
                sentence,
                SeasonChart.draw(days, 960),
                SeasonChart.draw(days, 360),
                known == 0 ? List.of() : rows(days));
    }

    private static List<Row> rows(HouseDays days) {
        List<Row> rows = new ArrayList<>();
        for (int i = days.size() - 1; i >= 0; i--) {
            rows.add(new Row(
                    DAY.format(days.day(i)),
                    three(days.temperature(), i, true),
                    three(days.humidity(), i, false),
                    two(days.light(), i),
                    known(days, i)));
        }
        return rows;
    }

    private static String three(HouseDays.Range range, int day, boolean decimals) {
        return range.mean().known(day)
                ? figure(range.minimum(), day, decimals) + " · " + figure(range.mean(), day, decimals) + " · "
                        + figure(range.maximum(), day, decimals)
                : NO_DATA;
    }

    private static String two(HouseDays.Range range, int day) {
        return range.mean().known(day)
                ? figure(range.mean(), day, false) + " · " + figure(range.maximum(), day, false)
                : NO_DATA;
    }

    private static String figure(RegularSeries series, int day, boolean decimals) {
        double value = series.valueOrNaN(day);
        return decimals ? Words.oneDecimal(value) : Words.whole(value);
    }

    private static String known(HouseDays days, int day) {
        double share = Math.max(
                days.temperature().covered().valueOrNaN(day),
                Math.max(
                        days.humidity().covered().valueOrNaN(day),
                        days.light().covered().valueOrNaN(day)));
        return Words.whole(Math.floor(100 * share)) + " %";
    }
}
