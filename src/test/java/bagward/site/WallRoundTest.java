package bagward.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bagward.board.Board;
import bagward.site.page.WallPage;
import bagward.site.view.Fact;
import bagward.site.view.Round;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class WallRoundTest {
    private static final Fact OUTLOOK = new Fact("Linden", "72 %");

    private final OpenSite site = new OpenSite();
    private final Board board = site.watch.board();
    private final int all = Round.of(board, Integer.MAX_VALUE).shown().size();

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void two_outlooks_below_leave_no_room_for_both_a_last_line_and_the_count_of_those_not_shown() {
        assertEquals(all - 2, shown(all - 1, List.of(OUTLOOK, OUTLOOK)));
        assertEquals(all - 1, shown(all - 1, List.of(OUTLOOK)));
    }

    @Test
    void all_lines_are_shown_where_they_fit() {
        assertEquals(all, shown(all, List.of(OUTLOOK, OUTLOOK)));
    }

    private int shown(int lines, List<Fact> outlooks) {
        Round round = WallPage.of(board, lines, outlooks).round();
        assertEquals(all, round.shown().size() + round.more());
        return round.shown().size();
    }
}
