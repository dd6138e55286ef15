package bagward.site;

import bagward.board.Board;
import bagward.climate.Span;
import bagward.site.page.DryingPage;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;

/** Places in which seed dries. */
final class DryingPages {
    private static final int WEEK = 7;
    private static final int FOUR_WEEKS = 28;

    private final Pages pages;

    DryingPages(Pages pages) {
        this.pages = pages;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/drying", this::drying);
    }

    private void drying(Context ctx) {
        int days = "28".equals(ctx.queryParam("days")) ? FOUR_WEEKS : WEEK;
        Board board = pages.watch().board();
        Span span = new Span(board.at().minus(Duration.ofDays(days)), board.at());
        pages.show(
                ctx,
                "drying",
                "Drying seed",
                DryingPage.of(board, days, place -> pages.watch().stay(place, span)));
    }
}
