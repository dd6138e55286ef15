package bagward.site;

import bagward.alarm.AlarmBook;
import bagward.alarm.AlarmLoad;
import bagward.board.AlarmView;
import bagward.board.Board;
import bagward.site.page.LoadPage;
import bagward.store.AlarmStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the alarms ask of people, and what to tune. */
final class LoadPages {
    private static final int USUAL_DAYS = 14;
    private static final Map<String, Integer> DAYS = Map.of("7", 7, "28", 28, "84", 84);

    private final Pages pages;
    private final AlarmStore journal;

    LoadPages(Pages pages, AlarmStore journal) {
        this.pages = pages;
        this.journal = journal;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/alarms/load", this::load);
    }

    private void load(Context ctx) {
        Board board = pages.watch().board();
        int days = Optional.ofNullable(ctx.queryParam("days")).map(DAYS::get).orElse(USUAL_DAYS);
        Instant now = pages.now();
        Instant from = now.atZone(board.zone())
                .toLocalDate()
                .minusDays(days - 1L)
                .atStartOfDay(board.zone())
                .toInstant();
        List<AlarmView> listed = board.alarms();
        AlarmBook book = AlarmBook.of(listed.stream().map(AlarmView::alarm).toList());
        AlarmLoad load = AlarmLoad.of(journal.events(from, now.plusMillis(1)), book, now, board.zone());
        pages.show(ctx, "load", "Alarm load", LoadPage.of(board, pages.watch().rules(), load, days));
    }
}
