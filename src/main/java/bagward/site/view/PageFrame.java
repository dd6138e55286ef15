package bagward.site.view;

import java.util.Optional;

/**
 * What stands around every page.
 *
 * @param title title of the page
 * @param section short name of the page for the navigation
 * @param station name of the station
 * @param time day and time of the board, in the station's zone
 * @param freshness how old the data is
 * @param summary how many things call, in one sentence, for people who cannot see the page change
 * @param who who works at this screen
 * @param notice what was just done; empty if nothing
 */
public record PageFrame(
        String title,
        String section,
        String station,
        String time,
        Freshness freshness,
        String summary,
        Optional<String> who,
        String notice) {
    /** Marks the link to the page that is shown. */
    public String current(String other) {
        return section.equals(other) ? "page" : "false";
    }
}
