package bagward.site;

import bagward.site.api.BoardAnswer;
import bagward.site.api.HealthAnswer;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** What other programs may read: board and health as JSON. Safe for use by several threads. */
final class JsonInterface {
    private final JsonAnswers json = new JsonAnswers();
    private final Pages pages;

    JsonInterface(Pages pages) {
        this.pages = pages;
    }

    void addTo(RoutesConfig routes) {
        routes.get(
                "/api/board",
                ctx -> json.answer(ctx, BoardAnswer.of(pages.watch().board(), pages.now())));
        routes.get("/health", this::health);
        new AlarmInterface(pages).addTo(routes);
    }

    private void health(Context ctx) {
        HealthAnswer health = HealthAnswer.of(pages.watch().health(), pages.now());
        ctx.status(health.well() ? 200 : 503);
        json.answer(ctx, health);
    }
}
