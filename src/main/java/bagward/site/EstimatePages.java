package bagward.site;

import bagward.bag.Head;
import bagward.board.BagView;
import bagward.site.page.EstimatePage;
import bagward.watch.BagHistory;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;

/** The page that explains the estimate of a bag. */
final class EstimatePages {
    private final Pages pages;
    private final HeadPages heads;
    private final SiteSettings settings;

    EstimatePages(Pages pages, HeadPages heads, SiteSettings settings) {
        this.pages = pages;
        this.heads = heads;
        this.settings = settings;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/bag/{tag}/estimate", this::show);
    }

    private void show(Context ctx) {
        Head head = heads.head(ctx);
        BagView bag = pages.watch().board().find(head.tag()).orElseThrow(NotFoundResponse::new);
        BagHistory history = pages.watch().history(head.tag()).orElseThrow(NotFoundResponse::new);
        EstimatePage page = EstimatePage.of(
                bag, settings.materials(), history.house(), pages.watch().rules());
        pages.show(ctx, "estimate", "Climate in the bag of " + head.tag(), page);
    }
}
