package bagward.site;

import bagward.board.Board;
import bagward.site.api.BoardAnswer;
import bagward.site.api.HealthAnswer;
import bagward.site.api.TonightAnswer;
import bagward.site.page.HealthPage;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;

/** What other programs may read: board and health as JSON; people see the health as a page. Safe for use by several threads. */
final class JsonInterface {
    private final JsonAnswers json = new JsonAnswers();
    private final Pages pages;

    JsonInterface(Pages pages) {
        this.pages = pages;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/api/board", ctx -> json.answer(ctx, board()));
        routes.get("/api/tonight", this::tonight);
        routes.get("/health", this::health);
        new AlarmInterface(pages).addTo(routes);
    }

    private BoardAnswer board() {
        Board board = pages.watch().board();
        return BoardAnswer.of(board, pages.freshness(board));
    }

    private void tonight(Context ctx) {
        Optional<String> house = Optional.ofNullable(ctx.queryParam("house"));
        Optional<String> tag = Optional.ofNullable(ctx.queryParam("tag"));
        json.answer(ctx, TonightAnswer.of(pages.watch().board(), house, tag));
    }

    private void health(Context ctx) {
        HealthAnswer health = HealthAnswer.of(pages.watch().health(), pages.now(), pages.boardLimit());
        ctx.status(health.well() ? 200 : 503).header("Vary", "Accept");
        if (ofPerson(ctx)) {
            pages.show(ctx, "health", "How the watch runs", HealthPage.of(health, pages.now()));
        } else {
            json.answer(ctx, health);
        }
    }

    /** Browsers name HTML among what they accept; programs that name nothing in particular get JSON. */
    private static boolean ofPerson(Context ctx) {
        return Optional.ofNullable(ctx.header("Accept"))
                .filter(accepted -> accepted.contains("text/html"))
                .isPresent();
    }
}
