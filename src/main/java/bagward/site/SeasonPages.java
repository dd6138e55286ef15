package bagward.site;

import bagward.site.page.SeasonPage;
import bagward.watch.Seasons;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;

/** Houses over months and years. */
final class SeasonPages {
    private static final int USUAL_DAYS = 120;
    private static final Map<String, Integer> DAYS = Map.of("30", 30, "365", 365, "730", 730);

    private final Pages pages;
    private final Seasons seasons;

    SeasonPages(Pages pages, Seasons seasons) {
        this.pages = pages;
        this.seasons = seasons;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/season", this::season);
    }

    private void season(Context ctx) {
        int days = Optional.ofNullable(ctx.queryParam("days")).map(DAYS::get).orElse(USUAL_DAYS);
        pages.show(
                ctx,
                "season",
                "House climate by day",
                SeasonPage.of(pages.watch().board(), seasons, days));
    }
}
