package bagward.site.page;

import bagward.bag.BagOutlook;
import bagward.bag.Outlook;
import bagward.board.BagView;
import bagward.board.Board;
import bagward.board.HouseView;
import bagward.site.chart.Chart;
import bagward.site.chart.NightChart;
import bagward.site.chart.NightLines;
import bagward.site.chart.NightRow;
import java.util.List;
import java.util.Optional;

/**
 * An outlook hour by hour: as a chart, and as a table for who reads or hears numbers.
 *
 * @param id of the table on the page
 * @param name "house" or "bag"
 * @param percent of the intervals: so many of a hundred hours they hold
 * @param wide for desks
 * @param narrow for phones
 * @param rows the hours
 */
public record NightHours(String id, String name, int percent, Chart wide, Chart narrow, List<NightRow> rows) {
    private static final double WIDE = 760;
    private static final double NARROW = 360;

    /** Copies the list. */
    public NightHours {
        rows = List.copyOf(rows);
    }

    /** The hours of a house; empty without an outlook. */
    static Optional<NightHours> of(Board board, HouseView house, double dampLimit) {
        return house.tonight() instanceof Outlook.Night night
                ? Optional.of(of(board, "tonight-" + house.house().id(), NightLines.of(night), dampLimit))
                : Optional.empty();
    }

    /** The hours of a bag; empty without an outlook of its house. */
    static Optional<NightHours> of(Board board, BagView bag, double dampLimit) {
        Optional<BagOutlook> tonight = bag.tonight();
        return tonight.isPresent() && houseOf(board, bag).tonight() instanceof Outlook.Night night
                ? Optional.of(of(board, "tonight-hours", NightLines.of(tonight.get(), night), dampLimit))
                : Optional.empty();
    }

    /** The house a bag hangs in. */
    static HouseView houseOf(Board board, BagView bag) {
        return board.houses().stream()
                .filter(view -> view.house().id().equals(bag.head().spot().house()))
                .findFirst()
                .orElseThrow();
    }

    private static NightHours of(Board board, String id, NightLines lines, double dampLimit) {
        return new NightHours(
                id,
                lines.name(),
                lines.humidity().coverage().percent(),
                NightChart.draw(lines, board.zone(), dampLimit, WIDE),
                NightChart.draw(lines, board.zone(), dampLimit, NARROW),
                NightRow.of(lines, board.zone()));
    }
}
