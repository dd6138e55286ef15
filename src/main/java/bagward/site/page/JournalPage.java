package bagward.site.page;

import bagward.board.Board;
import bagward.site.form.JournalFilter;
import bagward.site.page.BagPage.Choice;
import bagward.site.view.JournalLine;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;

/**
 * The journal of the alarms, or a part of it.
 *
 * @param lines newest first, no more than fit
 * @param count how many there are in all
 * @param day the day that is asked for, as an input field takes it; empty for all
 * @param house short name of the house that is asked for; empty for all
 * @param tag the head that is asked for; empty for all
 * @param houses to choose from
 * @param query the filter as it stands in addresses
 */
public record JournalPage(
        List<JournalLine> lines, int count, String day, String house, String tag, List<Choice> houses, String query) {
    /** The page of a filter. */
    public static JournalPage of(Board board, JournalFilter filter, List<JournalLine> lines, int count) {
        String day = filter.day().map(LocalDate::toString).orElse("");
        return new JournalPage(
                lines,
                count,
                day,
                filter.house(),
                filter.tag(),
                board.places().stream()
                        .map(house -> new Choice(house.id().value(), house.name()))
                        .toList(),
                "day=" + day + "&house=" + encoded(filter.house()) + "&tag=" + encoded(filter.tag()));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
