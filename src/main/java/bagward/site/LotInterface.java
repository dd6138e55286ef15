package bagward.site;

import bagward.bag.Head;
import bagward.bag.HeadState;
import bagward.site.api.LotAnswer;
import bagward.site.api.LotCourseAnswer;
import bagward.watch.LotBook;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;

/** Seed lots for other programs: what was entered of all, and what the climate did to one. Safe for use by several threads. */
final class LotInterface {
    private final JsonAnswers json = new JsonAnswers();
    private final Pages pages;
    private final HeadPages heads;
    private final LotBook lots;

    LotInterface(Pages pages, HeadPages heads, LotBook lots) {
        this.pages = pages;
        this.heads = heads;
        this.lots = lots;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/api/lots", this::all);
        routes.get("/api/lots/{tag}", this::one);
        routes.get("/lots.csv", this::table);
    }

    private void table(Context ctx) {
        List<List<String>> rows = LotTable.rows(
                pages.watch().register(), pages.now(), pages.watch().board().zone());
        CsvDownload.answer(ctx, "seed-lots.csv", LotTable.COLUMNS, rows);
    }

    private void all(Context ctx) {
        List<LotAnswer> answers = pages.watch().register().heads().stream()
                .filter(head -> head.stateAt(pages.now()) == HeadState.HARVESTED)
                .map(head -> LotAnswer.of(head, pages.now()))
                .toList();
        json.answer(ctx, answers);
    }

    private void one(Context ctx) {
        Head head = heads.head(ctx);
        json.answer(ctx, lots.course(head).map(LotCourseAnswer::of).orElseThrow(NotFoundResponse::new));
    }
}
